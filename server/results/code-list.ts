import { trimCell } from './cell-text.ts';
import { CsvReader, type CsvRecord } from './csv-records.ts';
import { ResultFileError } from './result-errors.ts';

/**
 * A file of codes: two columns, what a file of responses calls a student (in any case) and the student code. A heading row is known by
 * its second cell, which is no code. Used while reading and never kept. Throws ResultFileError with the line.
 */
export function readCodes(text: string): ReadonlyMap<string, string> {
	const plain = text.replace(/^\uFEFF/, '');
	const delimiter = [',', ';', '\t'].find((each) => (plain.split(/\r?\n/)[0] ?? '').includes(each)) ?? ',';
	const records: CsvRecord[] = [];
	const reader = new CsvReader(delimiter, (record) => records.push(record));
	reader.take(plain);
	reader.end();
	return pairCodes(
		records.map(({ line, cells, fault }) => ({ line, cells: fault === undefined ? cells.map(trimCell) : [] })),
	);
}

/** The same from pairs that are already apart; line is counted from 1. */
export function pairCodes(
	rows: readonly { readonly line: number; readonly cells: readonly string[] }[],
): ReadonlyMap<string, string> {
	const codes = new Map<string, string>();
	const owners = new Map<string, string>();
	for (const [index, { line, cells }] of rows.entries()) {
		const [name = '', code = ''] = cells;
		const isCode = /^[A-Z0-9][A-Z0-9-]{1,23}$/.test(code);
		if (index === 0 && !isCode && cells.length === 2) continue;
		if (!isCode || name === '' || cells.length !== 2) {
			const message = `expected a name and a student code of capital letters, digits and hyphens on line ${line} of the file of codes, found ${cells.length} cells`;
			throw new ResultFileError('code-list-unreadable', message);
		}
		const key = name.toLowerCase();
		if ((codes.get(key) ?? code) !== code || (owners.get(code) ?? key) !== key) {
			const message = `expected one student for each code, found code "${code}" on line ${line} of the file of codes contradicting an earlier line`;
			throw new ResultFileError('code-list-contradictory', message);
		}
		codes.set(key, code);
		owners.set(code, key);
	}
	return codes;
}
