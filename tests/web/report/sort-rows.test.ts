import { describe, expect, test } from 'vitest';
import { isFigureColumn, sortRows } from '../../../web/report/sort-rows.ts';

const rows = [
	['Item 10', '45 %', 3],
	['Item 2', '7 %', null],
	['Item 1', null, -1],
	['Item 3', '100 %', 3],
].map((row) => row as (string | number | null)[]);

describe('rows of a report in another order', () => {
	test('names go by the numbers in them', () => {
		const sorted = sortRows(rows, { column: 0, isFalling: false }).map(([name]) => name);
		expect(sorted).toEqual(['Item 1', 'Item 2', 'Item 3', 'Item 10']);
	});

	test('shares go by their size, and what is not given comes last both ways', () => {
		expect(sortRows(rows, { column: 1, isFalling: false }).map((row) => row[1])).toEqual([
			'7 %',
			'45 %',
			'100 %',
			null,
		]);
		expect(sortRows(rows, { column: 1, isFalling: true }).map((row) => row[1])).toEqual(['100 %', '45 %', '7 %', null]);
	});

	test('equal rows keep their order, and the rows given stay as they are', () => {
		expect(sortRows(rows, { column: 2, isFalling: true }).map(([name]) => name)).toEqual([
			'Item 10',
			'Item 3',
			'Item 1',
			'Item 2',
		]);
		expect(rows[0]?.[0]).toBe('Item 10');
	});

	test('a column of shares holds figures, one of names does not', () => {
		expect([0, 1, 2].map((column) => isFigureColumn(rows, column))).toEqual([false, true, true]);
		expect(isFigureColumn([['12 of 30'], ['−3 to 4']], 0)).toBe(true);
		expect(isFigureColumn([['6.3(D)']], 0)).toBe(false);
		expect(isFigureColumn([[null]], 0)).toBe(false);
	});
});
