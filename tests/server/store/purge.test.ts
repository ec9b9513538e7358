import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { restoreStore } from '../../../server/store/backup.ts';
import { openStore } from '../../../server/store/open-store.ts';
import { makeExplanation, makeGridded } from '../../helpers/items.ts';
import { fillSatBank, readText } from '../../helpers/sat-bank.ts';
import { makeTestFolder } from '../../helpers/test-folder.ts';

const clock = (): Date => new Date('2026-09-14T08:00:00Z');
const secret = 'Because the lift was zebra-marmalade';

/** Files of a folder, also below it, that hold a text in UTF-8 anywhere. */
function filesWith(folder: string, text: string): readonly string[] {
	return readdirSync(folder, { recursive: true, encoding: 'utf8', withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => join(entry.parentPath, entry.name))
		.filter((file) => readFileSync(file).includes(text));
}

/** A bank in files with two students who sat a form of two items, and a folder for backups beside it. */
async function openSatStore(folder: string) {
	const store = await openStore(join(folder, 'data'), { clock });
	await fillSatBank(store, [makeGridded(), makeExplanation()]);
	await readText(store, `Code;1;2\n6A-01;5;${secret}\n6A-02;7;Nothing to say\n`);
	const id = (await store.sittings.list())[0]?.id ?? '';
	return { store, id };
}

describe('purging a student', () => {
	test('reaches bank, write-ahead log, free pages, known backups, named ones and a bank put aside by a restore', async () => {
		const folder = makeTestFolder();
		const { store, id } = await openSatStore(folder);
		await store.ratings.rate(id, { reader: 'first', ratings: [{ code: '6A-01', position: 2, points: 1 }] });
		await store.backup(join(folder, 'known.db'));
		await store.close();
		await restoreStore(join(folder, 'data'), join(folder, 'known.db'), clock);
		// The restored copy was taken before it was written down, so it is named.
		const again = await openStore(join(folder, 'data'), { clock });
		await again.backup(join(folder, 'second.db'));
		expect(filesWith(folder, secret).length).toBeGreaterThanOrEqual(4);
		const report = await again.purge({ student: '6A-01' }, [join(folder, 'known.db')]);
		expect(report).toMatchObject({ sittings: 1, students: 1, answers: 2 });
		expect(report.places.map(({ found }) => found)).toEqual(['purged', 'purged', 'purged', 'purged']);
		expect(filesWith(folder, secret)).toEqual([]);
		expect(filesWith(folder, '6A-01')).toEqual([]);
		expect(filesWith(folder, 'Nothing to say').length).toBe(4);
		await expect(again.readStudent('6A-01')).rejects.toMatchObject({ code: 'not-found' });
		expect((await again.readStudent('6A-02')).sittings).toHaveLength(1);
		await again.close();
	});

	test('reaches pages that were freed before, when what it wrote was replaced', async () => {
		const folder = makeTestFolder();
		const { store } = await openSatStore(folder);
		const long = `${secret} ${'and so on '.repeat(1500)}`;
		await readText(store, `Code;1;2\n6A-01;5;${long}\n6A-02;7;x\n`, {}, { onto: 'replace' });
		// Closing writes the log into the file, so that what is freed next is freed there.
		await store.close();
		const again = await openStore(join(folder, 'data'), { clock });
		await readText(again, 'Code;1;2\n6A-01;5;short\n6A-02;7;x\n', {}, { onto: 'replace' });
		expect(filesWith(folder, secret)).not.toEqual([]);
		await again.purge({ student: '6A-01' });
		expect(filesWith(folder, secret)).toEqual([]);
		await again.close();
	});

	test('says so when another program keeps the log from being emptied, and makes up for it later', async () => {
		const folder = makeTestFolder();
		const { store } = await openSatStore(folder);
		const reader = new Database(join(folder, 'data', 'zeropair.db'));
		reader.prepare('BEGIN').run();
		reader.prepare('SELECT count(*) FROM responses').get();
		const report = await store.purge({ student: '6A-01' });
		expect(report.places).toMatchObject([{ found: 'refused', why: expect.stringContaining('purge again') }]);
		reader.prepare('COMMIT').run();
		reader.close();
		await expect(store.purge({ student: '6A-01' })).rejects.toMatchObject({ code: 'not-found' });
		expect(filesWith(folder, secret)).toEqual([]);
		await store.close();
	});

	test('that nobody knows changes nothing', async () => {
		const folder = makeTestFolder();
		const { store } = await openSatStore(folder);
		await expect(store.purge({ student: 'ZZ-99' })).rejects.toMatchObject({ code: 'not-found' });
		await store.close();
	});
});

describe('purging a sitting', () => {
	test('leaves the group and other sittings, and nothing of its responses', async () => {
		const folder = makeTestFolder();
		const { store, id } = await openSatStore(folder);
		await readText(store, 'Code;1\n6A-01;5\n', {}, { date: '2026-10-01' });
		await store.purge({ sitting: id });
		expect(filesWith(folder, secret)).toEqual([]);
		expect((await store.sittings.list()).map(({ sitting }) => sitting.date)).toEqual(['2026-10-01']);
		expect((await store.groups.get('class-6a')).group.studentCodes).toContain('6A-01');
		await store.close();
	});

	test('reports backups that are gone or are no banks, and forgets those that are gone', async () => {
		const folder = makeTestFolder();
		const { store, id } = await openSatStore(folder);
		const file = join(folder, 'moved.db');
		await store.backup(file);
		const { rmSync, writeFileSync } = await import('node:fs');
		rmSync(file);
		writeFileSync(join(folder, 'notes.txt'), 'no bank');
		const report = await store.purge({ sitting: id }, [join(folder, 'notes.txt')]);
		expect(report.places).toMatchObject([
			{ found: 'purged' },
			{ file, found: 'missing' },
			{ found: 'refused', why: expect.any(String) },
		]);
		expect(existsSync(file)).toBe(false);
		await store.close();
	});
});
