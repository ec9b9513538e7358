import { describe, expect, test } from 'vitest';
import { writeCsv } from '../../../web/csv.ts';
import { readCodePairs } from '../../../web/results/code-pairs.ts';
import { endOfRows } from '../../../web/results/file-content.ts';
import {
	firstChoices,
	listMissing,
	listStray,
	mappingOf,
	takeColumns,
	useColumn,
	useLayout,
} from '../../../web/results/reading-choices.ts';

const columns = [
	{ number: 1, heading: 'Name', as: 'discarded' },
	{ number: 2, heading: 'Code', as: 'student' },
	{ number: 3, heading: 'Q1', as: 'item', place: '1' },
	{ number: 4, heading: 'Q2', as: 'item', place: '2' },
] as const;
const taken = takeColumns(firstChoices, { columns, mapping: { student: 'Code' } }, true);

describe('choices for reading a file', () => {
	test('start from what the bank understood and name columns by number', () => {
		expect(mappingOf(taken)).toMatchObject({
			student: 2,
			items: [
				{ column: 3, place: '1' },
				{ column: 4, place: '2' },
			],
		});
		expect(listMissing(taken)).toEqual([]);
	});

	test('leave the student open where no column held codes', () => {
		const open = takeColumns(firstChoices, { columns, mapping: { student: 1 } }, false);
		expect(listMissing(open)).toEqual(['student']);
	});

	test('give each use one column', () => {
		const changed = useColumn(useColumn(taken, 0, 'student'), 2, 'item:2');
		expect(changed.uses).toEqual(['student', 'discarded', 'item:2', 'discarded']);
		expect(useColumn(changed, 2, 'discarded').uses).toEqual(['student', 'discarded', 'discarded', 'discarded']);
	});

	test('ask for the columns of a long file and keep none of the wide one', () => {
		const long = useLayout(taken, 'long');
		expect(listMissing(long)).toEqual(['place', 'answer']);
		const full = useColumn(useColumn(long, 2, 'place'), 3, 'answer');
		expect(mappingOf(full)).toMatchObject({ layout: 'long', student: 2, place: 3, answer: 4 });
		expect(mappingOf(full)).not.toHaveProperty('items');
		expect(mappingOf(full)).not.toHaveProperty('blanksAtEnd');
	});

	test('tell of headings like places that the form does not have, and of no others', () => {
		const headings = ['Name', 'Q99', 'Item 7.2', '12', 'Class 7A', 'Total'];
		const shown = headings.map((heading, index) => ({ number: index + 1, heading, as: 'discarded' as const }));
		const uses = headings.map((heading) => (heading === '12' ? 'student' : 'discarded') as 'student' | 'discarded');
		expect(listStray(shown, uses)).toEqual(['Q99', 'Item 7.2']);
	});

	test('part codes of no response by blanks and commas', () => {
		expect(mappingOf({ ...taken, omitted: ' 99, - ;x ' }).codes?.omitted).toEqual(['99', '-', 'x']);
	});
});

describe('a list of codes', () => {
	test('takes the code from the end of a line, so that names may hold commas', () => {
		const { pairs, bad } = readCodePairs('name;code\r\n"Reed, ""Kit""",7A-01\nLow, Ana\t7A-02\n\nnobody\n,7A-03\n');
		expect(pairs).toEqual([
			['Reed, "Kit"', '7A-01'],
			['Low, Ana', '7A-02'],
		]);
		expect(bad).toEqual([5, 6]);
	});
});

test('the beginning of a file ends with a row', () => {
	expect(endOfRows(new TextEncoder().encode('a,b\nc,d\ne'))).toBe(8);
	expect(endOfRows(new Uint8Array([0xff, 0xfe, 0x61, 0, 0x0a, 0, 0x62, 0]))).toBe(6);
	expect(endOfRows(new TextEncoder().encode('one row'))).toBe(7);
});

test('CSV keeps numbers and guards formulas', () => {
	expect(writeCsv([['-5', '=1+1', 'a "b", c', 3, undefined]])).toBe('-5,\'=1+1,"a ""b"", c",3,\r\n');
});
