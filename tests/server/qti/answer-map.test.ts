import { describe, expect, test } from 'vitest';
import type { ItemRecord } from '../../../item-bank/items/record.ts';
import { writeAnswerMap } from '../../../server/qti/answer-map.ts';
import { placeForm, placeItems } from '../../../server/qti/placement.ts';
import { sampleForm, sampleItems } from './sample-form.ts';
import { sampleKinds, sampleKindsForm } from './sample-kinds.ts';

test('the answer map names position, item, version, platform identifier, options and key, and warns in every row', () => {
	const lines = writeAnswerMap(sampleForm, placeForm(sampleForm, sampleItems)).split('\r\n');
	expect(lines[0]).toBe(
		'\ufeffnotice,position,part,section,item,version,platform item,title,kind,points,key,item score,option identifiers,option ids in the bank,text of A,text of B,text of C,text of D',
	);
	expect(lines[1]).toBe(
		'holds keys: keep confidential,1,,Choose,tide-gauge-drop,2,item-4954a7d8cc99,Item 1,choice,1,A,"1 for the key, otherwise 0",A B C D,a b c d,−11,−3 centimetres,3,11',
	);
	expect(lines[2]).toMatch(
		/^holds keys: keep confidential,2,,Choose,lift-lines,1,item-c21fcf1ef3b8,Item 2,multiple-choice,2,A C,"1 for the key, otherwise 0",A B C,c a b,"Horizontal/,
	);
	expect(lines[3]).toBe(
		'holds keys: keep confidential,3,,Write,cold-storage-counters,1,item-b666a2fdde7e,Item 3,gridded,3,-5,"1 for every spelling of the key, otherwise 0",,,,,,',
	);
	expect(lines).toHaveLength(5);
});

describe('rows of further kinds', () => {
	const lines = writeAnswerMap(sampleKindsForm, placeForm(sampleKindsForm, sampleKinds)).split('\r\n');
	const cells = (row: number): readonly string[] =>
		[...(lines[row] ?? '').matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
			([, quoted, plain]) => quoted ?? plain ?? '',
		);
	/** Position, part, kind, points, key and what earns what. */
	const gist = (row: number): readonly string[] => [1, 2, 8, 9, 10, 11].map((at) => cells(row)[at] ?? '');

	test('say what a platform calls the key and what it earns', () => {
		expect([1, 2, 3, 4, 5, 6].map(gist)).toEqual([
			['1', '', 'point', '1', 'P4', '1 for the key, otherwise 0'],
			['2', '', 'order', '2', 'B A C', '1 for the whole order, otherwise 0'],
			['3', '', 'match', '2', 'L1 R3; L2 R1', '1 for all pairs, otherwise 0'],
			['4', '', 'match', '3', 'L1 R3; L2 R2; L3 R1', '1/3 for each right pair'],
			['5', '', 'inline-choice', '1', 'A', '1 for the key, otherwise 0'],
			['6', '', 'multiple-choice', '3', 'A B D', '1/3 for each right option, -1/3 for each wrong one, never below 0'],
		]);
	});

	test('say what a scorer enters for each level of a rubric', () => {
		expect(gist(7)).toEqual([
			'7',
			'',
			'explanation',
			'2',
			'',
			'rated by a scorer: enter 1 for 2 of 2 (Says that adding a positive number moves right.); enter 0.5 for 1 of 2 (Compares −15 and −20 only.); enter 0 for 0 of 2 (Neither.)',
		]);
	});

	test('give each part of a set a row, with its share of the points', () => {
		expect(gist(8)).toEqual([
			'8',
			'1',
			'gridded',
			'1.6666666666666667',
			'-5',
			'1 for every spelling of the key, otherwise 0',
		]);
		expect(gist(9)).toEqual(['8', '2', 'point', '3.3333333333333335', 'P6', '1 for the key, otherwise 0']);
		expect([cells(8)[4], cells(9)[4]]).toEqual(['warehouse-set', 'warehouse-set']);
		expect(lines).toHaveLength(11);
	});

	test('name ticks by their numbers, and show the texts of both columns of a match', () => {
		expect(cells(1).slice(12, 14)).toEqual([
			'P1 P2 P3 P4 P5 P6 P7 P8 P9 P10 P11 P12 P13',
			'−8 −7 −6 −5 −4 −3 −2 −1 0 1 2 3 4',
		]);
		expect(cells(0).slice(14)).toEqual(
			['A', 'B', 'C', 'D', 'L1', 'L2', 'L3', 'R1', 'R2', 'R3', 'R4'].map((each) => `text of ${each}`),
		);
		expect(cells(4).slice(12)).toEqual([
			'L1 L2 L3 R1 R2 R3 R4',
			'a b c a b c d',
			...['', '', '', '', '2 − 5', '−2 × 5', '−2 + 5', '3', '−10', '−3', '10'],
		]);
	});
});

test.each([
	['=1+1', "'=1+1"],
	['@total', "'@total"],
	['+tide', "'+tide"],
	['-tide', "'-tide"],
	['\tindented', "'\tindented"],
	['-5', '-5'],
	['+5', '+5'],
	['−5', '−5'],
])('a text %j is written as %j, so that no spreadsheet runs it and numbers stay numbers', (text, written) => {
	const [first] = sampleItems;
	if (first?.item.kind !== 'choice') throw new Error('no choice item');
	const options = first.item.options.map((option, index) =>
		index === 1 ? { ...option, content: { kind: 'text' as const, text, worth: '-3' } } : option,
	);
	const record: ItemRecord = { ...first, item: { ...first.item, options } };
	const [, row = ''] = writeAnswerMap(undefined, placeItems([record])).split('\r\n');
	expect(row.split(',')[16]).toBe(written);
});

test('texts with commas, quotes and line ends stay one cell', () => {
	const form = {
		...sampleForm,
		form: {
			...sampleForm.form,
			sections: sampleForm.form.sections.map((section) => ({ ...section, title: 'a, "b"\nc' })),
		},
	};
	expect(writeAnswerMap(form, placeForm(form, sampleItems))).toContain(',"a, ""b""\nc",');
});
