import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { positionsOf } from '../../../item-bank/forms/check-form.ts';
import { hasCommand, requireOutside } from '../../helpers/reference.ts';
import { printKinds } from './all-kinds.ts';
import { demoForm, demoItems, printDemo } from './demo-forms.ts';

const hasTools =
	requireOutside('qpdf (Debian: qpdf)', hasCommand('qpdf')) &&
	requireOutside('pdfinfo and pdftotext (Debian: poppler-utils)', hasCommand('pdfinfo'));

describe.skipIf(!hasTools)('printed PDFs', () => {
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-print-'));
	const names = ['booklet', 'answer-sheets', 'key', 'administration', 'work-pages'];
	const kindNames = ['booklet', 'answer-sheets', 'key', 'administration', 'beside'].map((name) => `kinds-${name}`);
	const path = (name: string) => join(folder, `${name}.pdf`);
	const run = (command: string, ...args: readonly string[]) =>
		execFileSync(command, args, { encoding: 'utf8', maxBuffer: 50_000_000, stdio: ['ignore', 'pipe', 'pipe'] });

	beforeAll(async () => {
		const files = await printDemo('a', { paper: 'a4' }, ['6A-01']);
		for (const name of names) writeFileSync(path(name), files.get(`${name}.pdf`) ?? new Uint8Array());
		const large = await printDemo('a', { paper: 'letter', large: true, work: 'ruled' });
		writeFileSync(path('large'), large.get('booklet.pdf') ?? new Uint8Array());
		const kinds = await printKinds({ paper: 'letter', work: 'ruled' }, ['6A-01']);
		const beside = await printKinds({ paper: 'a4', grids: 'beside', large: true, work: 'ruled' });
		for (const name of ['booklet', 'answer-sheets', 'key', 'administration']) {
			writeFileSync(path(`kinds-${name}`), kinds.get(`${name}.pdf`) ?? new Uint8Array());
		}
		writeFileSync(path('kinds-beside'), beside.get('booklet.pdf') ?? new Uint8Array());
	});
	afterAll(() => rmSync(folder, { recursive: true }));

	test.each([...names, 'large', ...kindNames])('%s is found sound, titled, tagged and with a language', (name) => {
		expect(run('qpdf', '--check', path(name))).toContain('No syntax or stream encoding errors found');
		const info = run('pdfinfo', path(name));
		expect(info).toMatch(/Title: +.*Unit check: integers, (Form A|every kind)/);
		expect(info).toMatch(/Tagged: +yes/);
		const plain = execFileSync('qpdf', ['--qdf', '--object-streams=disable', path(name), '-'], {
			maxBuffer: 90_000_000,
		}).toString('latin1');
		expect(plain).toContain('/Lang (en)');
		expect(plain).toContain('/DisplayDocTitle true');
		expect(plain).toContain('pdfuaid:part');
	});

	test.each([...names, 'large', ...kindNames])('%s embeds every font it uses, as a subset', (name) => {
		const fonts = run('pdffonts', path(name)).trim().split('\n').slice(2);
		expect(fonts.length).toBeGreaterThan(0);
		for (const line of fonts)
			expect(line).toMatch(/^[A-Z]{6}\+SourceS(ans3|erif4)-\w+ +CID TrueType +Identity-H +yes yes yes/);
	});

	test.each([...names, 'large', ...kindNames])(
		'the tag tree of %s has one root and headings that skip no level',
		(name) => {
			const lines = run('pdfinfo', '-struct', path(name)).split('\n');
			expect(lines[0]).toMatch(/^Document/);
			expect(lines.filter((line) => /^\S/.test(line))).toHaveLength(1);
			const levels = lines.flatMap((line) => [...line.matchAll(/^\s+H([1-6])\b/g)].map((found) => Number(found[1])));
			expect(levels[0]).toBe(1);
			levels.forEach((level, index) => expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1));
		},
	);

	test('the tag tree of a booklet holds items in order, each with its figures described', () => {
		const form = demoForm('a');
		const text = run('pdfinfo', '-struct-text', path('booklet'));
		const numbers = [...text.matchAll(/H3 \(block\)\n\s+"(\d+)"/g)].map((found) => Number(found[1]));
		expect(numbers).toEqual(positionsOf(form.form).map(({ position }) => position));
		const plain = execFileSync('qpdf', ['--qdf', '--object-streams=disable', path('booklet'), '-'], {
			maxBuffer: 90_000_000,
		}).toString('latin1');
		for (const { entry } of positionsOf(form.form)) {
			const item = demoItems.find(({ id }) => id === entry.item)?.item;
			for (const block of item?.stem ?? []) {
				if (block.kind === 'figure') expect(plain).toContain(`/Alt (${describeFigure(block.figure)})`);
			}
		}
	});

	test('the tag tree of every kind numbers items and, below them, parts of sets, with what they share first', () => {
		const text = run('pdfinfo', '-struct-text', path('kinds-booklet'));
		const numbers = [...text.matchAll(/H([34]) \(block\)\n\s+"([^"]+)"/g)].map((found) => `H${found[1]} ${found[2]}`);
		expect(numbers).toEqual([
			...Array.from({ length: 12 }, (_, index) => `H3 ${index + 1}`),
			...['a', 'b', 'c', 'd'].map((part) => `H4 12${part}`),
			'H3 13',
		]);
		const [shared, first] = [
			text.indexOf('how far a mine lift moved'),
			text.indexOf('Where is the lift after trip 2?'),
		];
		expect(shared).toBeGreaterThan(0);
		expect(first).toBeGreaterThan(shared);
	});

	test('text of a booklet and of a sheet with every kind comes out in reading order', () => {
		const booklet = run('pdfinfo', '-struct-text', path('kinds-booklet')).replace(/\s+/g, ' ');
		const inOrder = (text: string, wanted: readonly string[]) => {
			let from = 0;
			for (const each of wanted) {
				const at = text.indexOf(each, from);
				expect(at, each).toBeGreaterThanOrEqual(0);
				from = at;
			}
		};
		inOrder(booklet, ['Put the numbers in order', 'A', '−4', 'D', '1st', '2nd', '3rd', '4th']);
		inOrder(booklet, ['Match each sum', 'Match each of these', '−3 + 8', '3 + (−8)', '… with one of these', '−11']);
		const sheet = run('pdfinfo', '-struct-text', path('kinds-answer-sheets')).replace(/\s+/g, ' ');
		inOrder(sheet, ['in order', '1st', '2nd', 'partners', '"11', 'scorer', '"12a', '"12b', '"12c', '"12d', '"13']);
	});

	test('a statement with a gap is read as one', () => {
		const plain = execFileSync('qpdf', ['--qdf', '--object-streams=disable', path('kinds-booklet'), '-'], {
			maxBuffer: 90_000_000,
		}).toString('latin1');
		expect(plain).toContain('/Alt (negative 8 gap negative 3)');
		expect(plain).toContain('/Alt (is less than)');
	});

	test('words at the ends of lines are not run together', () => {
		const text = run('pdfinfo', '-struct-text', path('booklet'));
		expect(text).toContain('At 6 a.m. it read ');
		expect(text).toContain('centimetres. Which statements are true? Choose all that apply.');
		expect(text).not.toMatch(/insidethe|oneright/);
	});

	test('text comes out of a booklet in the order of its items, with true minus signs', () => {
		const text = run('pdftotext', '-raw', path('booklet'), '-');
		const found = [
			'Which point is at −6?',
			'Which list goes from coldest to warmest?',
			'Which expression do the arrows show?',
			'What is −5 − (−12)?',
			'What is −72 ÷ (−8)?',
			'What change in week 5 would bring the fund back to 0 dollars?',
		].map((sentence) => text.indexOf(sentence));
		expect(found.every((at) => at >= 0)).toBe(true);
		expect(found).toEqual([...found].sort((a, b) => a - b));
	});

	test('pages are printed in black and greys alone', () => {
		const picture = execFileSync('pdftoppm', ['-r', '40', '-f', '2', '-l', '3', path('booklet')], {
			maxBuffer: 50_000_000,
		});
		const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(picture.toString('latin1', 0, 60));
		const start = head?.[0].length ?? 0;
		const end = start + Number(head?.[1]) * Number(head?.[2]) * 3;
		let coloured = 0;
		for (let at = start; at < end; at += 3) {
			if (picture[at] !== picture[at + 1] || picture[at] !== picture[at + 2]) coloured += 1;
		}
		expect([Number(head?.[1]), coloured]).toEqual([331, 0]);
	});

	test('nothing in a large booklet of every kind is set below 18 points', async () => {
		const files = await printKinds({ paper: 'a4', large: true, work: 'ruled' });
		writeFileSync(path('kinds-large'), files.get('booklet.pdf') ?? new Uint8Array());
		const plain = execFileSync('qpdf', ['--qdf', '--object-streams=disable', path('kinds-large'), '-'], {
			maxBuffer: 90_000_000,
		}).toString('latin1');
		const sizes = [...plain.matchAll(/\/F\d+ ([\d.]+) Tf/g)].map((found) => Number(found[1]));
		expect(sizes.length).toBeGreaterThan(100);
		expect(Math.min(...sizes)).toBeGreaterThanOrEqual(17.9);
	});

	test('nothing in a large booklet is set below 18 points', () => {
		const plain = execFileSync('qpdf', ['--qdf', '--object-streams=disable', path('large'), '-'], {
			maxBuffer: 90_000_000,
		}).toString('latin1');
		const sizes = [...plain.matchAll(/\/F\d+ ([\d.]+) Tf/g)].map((found) => Number(found[1]));
		expect(sizes.length).toBeGreaterThan(200);
		expect(Math.min(...sizes)).toBeGreaterThanOrEqual(17.9);
	});
});
