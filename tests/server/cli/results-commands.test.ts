import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openStore } from '../../../server/store/open-store.ts';
import { makeCommandLine } from '../../helpers/command-line.ts';
import { fillSatBank, rightRow, wideFile } from '../../helpers/sat-bank.ts';

async function openLine() {
	const line = makeCommandLine();
	const store = await openStore(line.data);
	await fillSatBank(store);
	await store.close();
	const map = line.write('map.json', { student: 'Code' });
	const read = (file: string, ...words: string[]) =>
		line.run([
			'responses',
			'read',
			file,
			'--form',
			'every-kind',
			'--group',
			'class-6a',
			'--date',
			'2026-09-14',
			'--map',
			map,
			...words,
		]);
	return { ...line, read };
}

test('rejected rows are written down also when no row can be taken', async () => {
	const { folder, write, read } = await openLine();
	const file = write('strangers.csv', wideFile(['Ada', ...rightRow], ['Ben', ...rightRow]));
	const rejected = join(folder, 'rejected.csv');
	const refused = await read(file, '--rejected', rejected);
	expect(refused.status).not.toBe(0);
	const lines = readFileSync(rejected, 'utf8').split('\r\n');
	expect(lines.slice(1, 3).map((line) => line.split(',').slice(0, 2))).toEqual([
		['2', 'student-unknown'],
		['3', 'student-unknown'],
	]);
});

test('a file goes from preview over a dry run into a sitting, an analysis and a report', async () => {
	const { folder, write, run, read } = await openLine();
	const file = write('class.csv', wideFile(['6A-01', ...rightRow], ['6A-02', ...rightRow], ['Ada', ...rightRow]));
	const preview = await run(['responses', 'preview', file, '--form', 'every-kind']);
	expect(preview.out).toContain('mapping: {"student":"Code"}');
	const trial = await read(file, '--dry-run');
	expect(trial.out).toContain('Would take 20 responses of 2 students');
	expect((await run(['sittings', 'list'])).out).toBe('There are no sittings yet.');

	const rejected = join(folder, 'rejected.csv');
	const done = await read(file, '--rejected', rejected);
	expect([done.status, done.out]).toEqual([1, expect.stringContaining('line 4: expected a student code')]);
	expect(readFileSync(rejected, 'utf8')).toContain('4,student-unknown,');
	const list = await run(['sittings', 'list', '--json']);
	const [{ id }] = list.json;
	expect((await run(['sittings', 'show', id])).out).toContain('6A-01');

	const analysis = await run(['analysis', 'items', id, '--own']);
	expect(analysis.out).toContain('A sum of unlike signs');
	expect((await run(['analysis', 'items', id])).out).toContain('Hidden: fewer than 10 students.');
	expect((await run(['analysis', 'item', 'every-kind-item-1', '--own'])).out).toContain('over all its sittings');
	expect((await run(['analysis', 'item'])).err).toContain('expected ITEM, found none');
	expect((await run(['analysis', 'form', id, '--own', '--cut', 'many'])).err).toContain('found "many"');
	expect((await run(['analysis', 'coverage', id, '--depth', '6.3(D)'])).err).toContain('found "6.3(D)"');
	const codes = write('codes.txt', '6A-01\n');
	const compared = await run(['analysis', 'items', id, '--own', '--focal-codes', codes]);
	expect(compared.out).toContain('500 in both, found 1 and 1');
	const report = await run(['report', 'class', '--to', join(folder, 'out'), '--sitting', id, '--own']);
	expect(report.status).toBe(0);
	for (const ending of ['csv', 'pdf']) expect(existsSync(join(folder, 'out', `class-own.${ending}`))).toBe(true);

	expect((await run(['students', 'show', '6A-01'])).out).toContain('"CADB" correct');
	expect((await run(['students', 'purge', '6A-01'])).status).toBe(2);
	expect((await run(['students', 'purge', '6A-01', '--confirm', '6A-01'])).out).toContain('zeropair.db: purged');
	expect((await run(['sittings', 'purge', id, '--confirm', id])).status).toBe(0);
	expect((await run(['sittings', 'list'])).out).toBe('There are no sittings yet.');
});

test.each([
	['both --add and --replace', ['--add', '--replace'], 2, 'found both'],
	['an unknown mode', ['--mode', 'oral'], 2, 'expected --mode'],
	['a missing file of codes', ['--codes', '/nowhere/codes.csv'], 1, 'expected a file this account can use'],
])('reading refuses %s', async (_title, words, status, message) => {
	const { write, read } = await openLine();
	const answer = await read(write('class.csv', wideFile(['6A-01', ...rightRow])), ...words);
	expect([answer.status, answer.err]).toEqual([status, expect.stringContaining(message)]);
});

test('a file that is not there is refused', async () => {
	const { read } = await openLine();
	const answer = await read('/nowhere/class.csv');
	expect([answer.status, answer.err]).toEqual([1, expect.stringContaining('/nowhere/class.csv')]);
});
