import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { makeCommandLine } from '../../helpers/command-line.ts';
import { countPages } from '../../helpers/pdf-pages.ts';
import { choiceItem, formOf, griddedItem } from '../../helpers/sample-items.ts';

async function makeBank() {
	const line = makeCommandLine();
	await line.run([
		'items',
		'add',
		line.write('items.json', [
			{ id: 'lift-one', item: choiceItem() },
			{ id: 'tide-one', item: griddedItem() },
		]),
	]);
	await line.run([
		'forms',
		'create',
		line.write('form.json', { id: 'form-a', form: formOf(['lift-one', 'tide-one']) }),
	]);
	return { ...line, paper: join(line.folder, 'paper') };
}

const names = [
	'administration.pdf',
	'answer-sheets.geometry.json',
	'answer-sheets.pdf',
	'booklet.pdf',
	'key.pdf',
	'work-pages.pdf',
];

describe('print', () => {
	test('writes every file for its owner alone, the same bytes each time', async () => {
		const { run, paper, folder } = await makeBank();
		expect((await run(['print', 'form-a', '--to', paper])).status).toBe(0);
		expect(readdirSync(paper).sort()).toEqual(names);
		for (const name of names) expect(statSync(join(paper, name)).mode & 0o077).toBe(0);
		const again = join(folder, 'again');
		expect((await run(['print', 'form-a', '--to', again])).status).toBe(0);
		for (const name of names)
			expect(readFileSync(join(again, name)).equals(readFileSync(join(paper, name)))).toBe(true);
	});

	test('makes a sheet for each student of a class list and a blank one', async () => {
		const { run, write, paper } = await makeBank();
		const list = write('class.csv', '\uFEFFstudent code;group\r\n"7A-01";7A\r\n7A-02;7A\r\n');
		expect((await run(['print', 'form-a', '--to', paper, '--class', list, '--paper', 'a4'])).status).toBe(0);
		expect(countPages(readFileSync(join(paper, 'answer-sheets.pdf')))).toBe(3);
	});

	test('prints for a group of the bank', async () => {
		const { run, write, paper } = await makeBank();
		await run([
			'groups',
			'add',
			write('group.json', { id: 'seven-a', group: { name: '7A', studentCodes: ['7A-09'] } }),
		]);
		expect((await run(['print', 'form-a', '--to', paper, '--group', 'seven-a'])).status).toBe(0);
		expect(countPages(readFileSync(join(paper, 'answer-sheets.pdf')))).toBe(2);
	});

	test('writes nothing when something is wrong', async () => {
		const { run, write, paper, folder } = await makeBank();
		const twice = write('twice.csv', '7A-01\n7A-01\n');
		expect((await run(['print', 'form-a', '--to', paper, '--class', twice])).err).toContain('found "7A-01" at entry 2');
		expect(
			(await run(['print', 'form-a', '--to', paper, '--class', write('gap.csv', 'code;group\n;7A\n7A-02;7A\n')])).err,
		).toContain('found an empty one');
		expect((await run(['print', 'form-a', '--to', paper, '--class', 'nowhere.csv'])).status).toBe(1);
		expect((await run(['print', 'form-b', '--to', paper])).status).toBe(1);
		expect((await run(['print', 'form-a'])).status).toBe(2);
		expect((await run(['print', 'form-a', '--to', paper, '--paper', 'a3'])).status).toBe(2);
		expect((await run(['print', 'form-a', '--to', paper, '--class', twice, '--group', 'x-1'])).status).toBe(2);
		expect(existsSync(paper)).toBe(false);
		const file = join(folder, 'a-file');
		writeFileSync(file, '');
		expect((await run(['print', 'form-a', '--to', join(file, 'paper')])).err).toContain('a-file');
	});

	test('replaces only when asked, and stops when told', async () => {
		const { run, paper, folder } = await makeBank();
		await run(['print', 'form-a', '--to', paper]);
		expect((await run(['print', 'form-a', '--to', paper])).err).toContain('already there');
		expect((await run(['print', 'form-a', '--to', paper, '--replace', '--large'])).status).toBe(0);
		const stopped = await run(['print', 'form-a', '--to', join(folder, 'stopped')], AbortSignal.abort());
		expect(stopped.status).toBe(1);
		expect(existsSync(join(folder, 'stopped'))).toBe(false);
	});
});
