import { stringify } from 'csv-stringify/sync';

/** What a cell of a CSV file can hold. */
export type CsvCell = string | number | undefined;

/**
 * Rows as CSV that spreadsheets open safely: UTF-8 with a byte-order mark, lines end with CR LF. Numbers, and texts that are
 * numbers, stay numbers.
 */
export function writeCsv(headings: readonly string[], rows: Iterable<readonly CsvCell[]>): string {
	const guarded = [headings, ...rows].map((row) => row.map(guardCell));
	return stringify(guarded, { bom: true, record_delimiter: 'windows' });
}

/**
 * Keeps a spreadsheet from running a cell as a formula: text that opens with = + - @, a tab or a line end gets an apostrophe in
 * front, also after blanks. Decimal numbers such as -5 or 0.25 stay as they are. U+2212 opens no formula.
 */
export function guardCell(cell: CsvCell): string {
	if (cell === undefined) return '';
	if (typeof cell === 'number') return String(cell);
	if (/^[+-]?\d+(\.\d+)?$/.test(cell)) return cell;
	return /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/.test(cell) ? `'${cell}` : cell;
}
