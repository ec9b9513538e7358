import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CsvReader, type CsvRecord, longestRecord } from '../../../server/results/csv-records.ts';

/** Reads text in pieces of a size. */
function read(text: string, delimiter = ',', size = text.length || 1): readonly CsvRecord[] {
	const records: CsvRecord[] = [];
	const reader = new CsvReader(delimiter, (record) => records.push(record));
	for (let at = 0; at < text.length; at += size) reader.take(text.slice(at, at + size));
	reader.end();
	return records;
}
const cellsOf = (records: readonly CsvRecord[]) => records.map(({ cells }) => cells);

describe('records', () => {
	test('are read back as another writer wrote them, however the text is cut', () => {
		const cell = fc.oneof(
			fc.string({ unit: fc.constantFrom('a', '"', ',', ';', '\n', '\r\n', ' ', '−', '=') }),
			fc.string(),
		);
		const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 });
		fc.assert(
			fc.property(
				rows,
				fc.integer({ min: 1, max: 7 }),
				fc.constantFrom(',', ';', '\t', '|'),
				(written, size, delimiter) => {
					const text = stringify(written as string[][], { delimiter, quoted: true, record_delimiter: '\r\n' });
					expect(cellsOf(read(text, delimiter, size))).toEqual(written);
				},
			),
		);
	});

	test('end with LF, CR LF or CR, and the last one with nothing', () => {
		for (const end of ['\n', '\r\n', '\r']) {
			for (const size of [1, 2, 100]) {
				expect(cellsOf(read(`a,b${end}c,d`, ',', size))).toEqual([
					['a', 'b'],
					['c', 'd'],
				]);
			}
		}
	});

	test('know the line they begin on, also after line ends within quotation marks and blank lines', () => {
		expect(read('a,b\n"x\ny",2\n\nc,d\n').map(({ line }) => line)).toEqual([1, 2, 5]);
	});

	test('of blank cells are kept, lines without anything are not', () => {
		expect(cellsOf(read(',\n\n,,\n'))).toEqual([
			['', ''],
			['', '', ''],
		]);
	});
});

describe('faults', () => {
	test.each([
		['a quotation mark inside a cell', 'a,b\nc"d,e\nf,g\n', 'quote-inside', 2],
		['text after a closing quotation mark', 'a,b\n"c"d,e\nf,g\n', 'text-after-quote', 2],
	])('%s spoils its line alone', (_title, text, fault, line) => {
		const records = read(text);
		expect(records[1]).toMatchObject({ fault, line });
		expect(records[2]).toEqual({ line: 3, cells: ['f', 'g'] });
	});

	test('a quotation mark that is never closed is told with the line it stands on', () => {
		expect(read('a,b\nc,"d\ne,f\n').at(-1)).toMatchObject({ fault: 'quote-open', line: 2 });
	});

	test('a quotation mark that swallows a long file costs one record, not all of it', () => {
		const filler = 'filler,1\n'.repeat(longestRecord / 5);
		const records = read(`a,b\nx,"open\n${filler}last,2\n`, ',', 65_536);
		expect(records[1]).toMatchObject({ fault: 'too-long', line: 2 });
		expect(records.at(-1)?.cells).toEqual(['last', '2']);
		expect(records.filter(({ fault }) => fault !== undefined)).toHaveLength(1);
	});
});
