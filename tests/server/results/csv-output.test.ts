import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guardCell, writeCsv } from '../../../server/results/csv-output.ts';
import { CsvReader } from '../../../server/results/csv-records.ts';

describe('cells', () => {
	test.each([
		['-5', '-5'],
		['+5', '+5'],
		['-0.25', '-0.25'],
		['−5', '−5'],
		['=1+1', "'=1+1"],
		['@x', "'@x"],
		['-5+A1', "'-5+A1"],
		['+cmd', "'+cmd"],
		['  =1', "'  =1"],
		['＝1', "'＝1"],
		['\t=1', "'\t=1"],
		['a=b', 'a=b'],
	])('%j is written as %j', (cell, written) => {
		expect(guardCell(cell)).toBe(written);
	});

	test('numbers stay numbers', () => {
		expect(writeCsv(['a', 'b'], [[-5, undefined]])).toBe('\uFEFFa,b\r\n-5,\r\n');
	});
});

test('what is written reads back, guarded cells with their apostrophe', () => {
	const cell = fc.oneof(fc.string(), fc.constantFrom('=A1', '-5', '"', ',', '\r\n', '−5'));
	fc.assert(
		fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 5 }), (rows) => {
			const records: (readonly string[])[] = [];
			const reader = new CsvReader(',', ({ cells }) => records.push(cells));
			reader.take(writeCsv(['x', 'y'], rows).slice(1));
			reader.end();
			expect(records.slice(1)).toEqual(rows.map((row) => row.map(guardCell)));
		}),
	);
});
