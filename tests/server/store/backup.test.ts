import { readdirSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { restoreStore } from '../../../server/store/backup.ts';
import { openStore } from '../../../server/store/open-store.ts';
import { choiceItem, griddedItem } from '../../helpers/sample-items.ts';
import { makeTestFolder } from '../../helpers/test-folder.ts';

const clock = (): Date => new Date('2026-09-14T08:00:00Z');

/** A folder with a bank of some items, closed, and a backup of it beside. */
async function makeBackup(count: number): Promise<{ folder: string; data: string; file: string }> {
	const folder = makeTestFolder();
	const data = join(folder, 'data');
	const file = join(folder, 'copy.db');
	const store = await openStore(data);
	await store.items.createMany(
		Array.from({ length: count }, (_unused, index) => ({ id: `item-${index}`, item: griddedItem() })),
	);
	await store.backup(file);
	await store.close();
	return { folder, data, file };
}

describe('backup', () => {
	test('copies a bank in use, whole, for its owner alone', async () => {
		const folder = makeTestFolder();
		const store = await openStore(join(folder, 'data'));
		await store.items.create({ id: 'tide-one', item: griddedItem() });
		const report = await store.backup(join(folder, 'copy.db'));
		await store.items.create({ item: choiceItem() });
		await store.close();
		expect(report.bytes).toBe(statSync(report.file).size);
		expect((statSync(report.file).mode & 0o777).toString(8)).toBe('600');
		const copy = new Database(report.file, { readonly: true });
		expect(copy.prepare('SELECT id FROM items').pluck().all()).toEqual(['tide-one']);
		expect(copy.pragma('integrity_check', { simple: true })).toBe('ok');
		copy.close();
	});

	test('never overwrites', async () => {
		const { data, file } = await makeBackup(1);
		const store = await openStore(data);
		const before = readFileSync(file);
		await expect(store.backup(file)).rejects.toMatchObject({ code: 'file-exists', file });
		expect(readFileSync(file).equals(before)).toBe(true);
		await store.close();
	});

	test('into a folder that is not there is refused and leaves nothing', async () => {
		const { folder, data } = await makeBackup(1);
		const store = await openStore(data);
		await expect(store.backup(join(folder, 'missing', 'copy.db'))).rejects.toMatchObject({ code: 'file-refused' });
		await store.close();
		expect(readdirSync(folder).sort()).toEqual(['copy.db', 'data']);
	});
});

describe('restore', () => {
	test('goes after a bank that was opened, copied and closed, and did nothing else', async () => {
		const { folder, data, file } = await makeBackup(1);
		const store = await openStore(data);
		await store.backup(join(folder, 'second.db'));
		await store.close();
		expect((await restoreStore(data, file, clock)).before).toBeDefined();
	});

	test('puts the backup in place and keeps what was there', async () => {
		const { data, file } = await makeBackup(3);
		const later = await openStore(data);
		await later.items.create({ id: 'later-one', item: choiceItem() });
		await later.close();
		const { before } = await restoreStore(data, file, clock);
		expect(before).toBe(join(data, 'zeropair.db.before-restore-2026-09-14T080000'));
		const store = await openStore(data);
		expect(await store.items.count()).toBe(3);
		await store.close();
		const kept = new Database(before ?? '', { readonly: true });
		expect(kept.prepare('SELECT count(*) FROM items').pluck().get()).toBe(4);
		kept.close();
		for (const name of readdirSync(data)) expect((statSync(join(data, name)).mode & 0o777).toString(8)).toBe('600');
	});

	test('twice within a second keeps both banks that were there', async () => {
		const { data, file } = await makeBackup(1);
		const first = await restoreStore(data, file, clock);
		const second = await restoreStore(data, file, clock);
		expect(first.before).not.toBe(second.before);
		expect(readdirSync(data).filter((name) => name.includes('before-restore'))).toHaveLength(2);
	});

	test('begins a bank where there was none', async () => {
		const { folder, file } = await makeBackup(2);
		const fresh = join(folder, 'fresh');
		expect(await restoreStore(fresh, file, clock)).toEqual({});
		const store = await openStore(fresh);
		expect(await store.items.count()).toBe(2);
		await store.close();
	});

	test('waits for nobody: a bank in use is not replaced', async () => {
		const { data, file } = await makeBackup(2);
		const store = await openStore(data);
		await store.items.create({ item: choiceItem() });
		await expect(restoreStore(data, file, clock)).rejects.toMatchObject({ code: 'store-busy' });
		expect(await store.items.count()).toBe(3);
		await store.close();
		expect(readdirSync(data)).toEqual(['zeropair.db']);
	});

	test.each<readonly [string, string, (file: string) => void]>([
		['is not there', 'file-refused', () => undefined],
		['is no database', 'store-foreign', (file) => writeFileSync(file, 'once upon a time '.repeat(99))],
		['is empty', 'store-foreign', (file) => writeFileSync(file, '')],
		[
			'is the database of another program',
			'store-foreign',
			(file) => {
				const database = new Database(file);
				database.exec('CREATE TABLE recipes (name TEXT)');
				database.close();
			},
		],
	])('refuses a file that %s and leaves the bank as it was', async (_title, code, make) => {
		const { folder, data } = await makeBackup(2);
		const file = join(folder, 'other.db');
		make(file);
		const before = readFileSync(join(data, 'zeropair.db'));
		await expect(restoreStore(data, file, clock)).rejects.toMatchObject({ code });
		expect(readFileSync(join(data, 'zeropair.db')).equals(before)).toBe(true);
		expect(readdirSync(data)).toEqual(['zeropair.db']);
	});

	test('refuses a backup of a newer version', async () => {
		const { data, file } = await makeBackup(1);
		const raw = new Database(file);
		raw.prepare("INSERT INTO migrations VALUES (900, 'from-the-future', '2030-01-01')").run();
		raw.close();
		await expect(restoreStore(data, file, clock)).rejects.toMatchObject({ code: 'store-newer', found: 900 });
	});

	test('refuses a damaged backup', async () => {
		const { data, file } = await makeBackup(300);
		truncateSync(file, Math.floor(statSync(file).size / 8192) * 4096);
		await expect(restoreStore(data, file, clock)).rejects.toMatchObject({ code: 'store-damaged' });
		const store = await openStore(data);
		expect(await store.items.count()).toBe(300);
		await store.close();
	});
});
