import { describe, expect, test } from 'vitest';
import { checkItem } from '../../../item-bank/checks/check-item.ts';
import type { Alignment, Item } from '../../../item-bank/types.ts';
import { makeChoice, makeGridded, makeMultipleChoice, numberOptions } from '../../helpers/items.ts';

const codesOf = (item: Item): readonly string[] => checkItem(item).map(({ code }) => code);
const align = (changes: Partial<Alignment>): Alignment => ({
	framework: 'teks-math',
	edition: '2012',
	code: '6.3(D)',
	grade: '6',
	extent: 'full',
	...changes,
});

test('sound items have no problems', () => {
	for (const item of [makeGridded(), makeChoice(), makeMultipleChoice()]) expect(checkItem(item)).toEqual([]);
});

describe('texts', () => {
	test.each([
		['a control character', 'What is\u0000 this?', 'U+0000'],
		['a lone surrogate', 'What is \ud800 this?', 'U+D800'],
		['a noncharacter', 'What is \uffff this?', 'U+FFFF'],
	])('refuse %s, which no XML document can hold', (_name, text, point) => {
		const problems = checkItem(makeGridded({ stem: [{ kind: 'paragraph', text }] }));
		expect(problems).toEqual([expect.objectContaining({ code: 'illegal-character', path: '/stem/0/text' })]);
		expect(problems[0]?.message).toContain(point);
	});
	test('refuse blanks only, an open backtick and mathematics that cannot be read', () => {
		expect(codesOf(makeGridded({ name: '  ' }))).toEqual(['text-blank']);
		expect(codesOf(makeGridded({ stem: [{ kind: 'paragraph', text: 'What is `-3?' }] }))).toEqual(['rich-text']);
		const math = makeGridded({
			stem: [
				{ kind: 'paragraph', text: 'Work it out.' },
				{ kind: 'mathematics', math: '3 ++ x' },
			],
		});
		expect(codesOf(math)).toEqual(['expression-syntax']);
	});
});

describe('stem', () => {
	test('needs a paragraph', () => {
		expect(codesOf(makeGridded({ stem: [{ kind: 'mathematics', math: '-3 - (-8)' }] }))).toEqual([
			'stem-without-question',
		]);
	});
	test('refuses ragged tables', () => {
		const table = {
			kind: 'table',
			header: ['Day', 'Change'],
			rows: [
				['Monday', '`-3`'],
				['Tuesday', '`5`', '?'],
			],
		} as const;
		const item = makeGridded({ stem: [{ kind: 'paragraph', text: 'What is the total change?' }, table] });
		expect(checkItem(item)).toEqual([expect.objectContaining({ code: 'table-ragged', path: '/stem/1/rows/1' })]);
	});
	test('refuses a figure that cannot be drawn, with its place', () => {
		const item = makeGridded({
			given: 'counters',
			stem: [
				{ kind: 'paragraph', text: 'What number do the counters show?' },
				{ kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 2, ringedPairs: 3 } },
			],
		});
		const problems = checkItem(item);
		expect(problems.length).toBeGreaterThan(0);
		for (const { path } of problems) expect(path).toMatch(/^\/stem\/1\/figure/);
	});
});

describe('options', () => {
	test('stand in letter order', () => {
		const options = numberOptions(-11, -7, 7).map((option, index) => ({ ...option, id: 'acb'[index] ?? '' }));
		expect(codesOf(makeChoice({ options }))).toEqual(['option-id-order', 'option-id-order']);
	});
	test('are of one kind and say different things', () => {
		const mixed = makeChoice({
			options: [...numberOptions(-7, 7), { id: 'c', content: { kind: 'text', text: 'eleven', worth: '11' } }],
		});
		expect(codesOf(mixed)).toEqual(['option-kinds-mixed']);
		const options = [...numberOptions(-11, -7), { id: 'c', content: { kind: 'mathematics', math: '−11' } }] as const;
		expect(codesOf(makeChoice({ options }))).toContain('option-repeated');
	});
	test('show numbers in increasing order', () => {
		expect(codesOf(makeChoice({ options: numberOptions(-7, -11, 7) }))).toEqual(['option-number-order']);
	});
});

describe('grid', () => {
	test('must be known and hold the key', () => {
		expect(codesOf(makeGridded({ grid: 'no-such-grid' }))).toEqual(['unknown-grid-profile']);
		expect(codesOf(makeGridded({ expression: '-100 * 100' }))).toEqual(['grid-too-narrow']);
	});
});

test('an item holds the model it says it gives', () => {
	for (const given of ['counters', 'number-line', 'table', 'story'] as const) {
		expect(codesOf(makeGridded({ given }))).toEqual(['given-not-found']);
	}
	expect(codesOf(makeGridded({ given: 'story', context: { setting: 'mine-lift', role: 'change' } }))).toEqual([]);
});

describe('alignments', () => {
	test('have exactly one primary and no repeats', () => {
		expect(codesOf(makeGridded({ alignments: [align({})] }))).toEqual(['primary-alignment-count']);
		const twice = [align({ primary: true }), align({})];
		expect(codesOf(makeGridded({ alignments: twice }))).toEqual(['alignment-repeated']);
	});
	test('name a known framework, edition and code, and get near codes offered', () => {
		expect(codesOf(makeGridded({ alignments: [align({ primary: true, edition: '1999' })] }))).toEqual([
			'unknown-framework',
		]);
		const [problem] = checkItem(makeGridded({ alignments: [align({ primary: true, code: '6.3D' })] }));
		expect(problem).toMatchObject({ code: 'unknown-standard', path: '/alignments/0/code' });
		expect(problem?.message).toContain('did you mean 6.3(D)?');
	});
	test('never put a signed item under a standard about positive numbers', () => {
		const alignments = [align({ primary: true }), align({ code: '6.3(E)' })];
		expect(codesOf(makeGridded({ alignments }))).toEqual(['standard-positive-only']);
		expect(
			codesOf(
				makeGridded({ alignments, expression: '3 * 8', stem: [{ kind: 'paragraph', text: 'What is `3 × 8`?' }] }),
			),
		).toEqual([]);
	});
});
