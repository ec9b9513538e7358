/** What a field of a line can hold; undefined is an empty one. */
export type CsvField = string | number | undefined;

/** Lines as CSV by RFC 4180. Texts that a spreadsheet would run as a formula get an apostrophe; numbers stay numbers. */
export function writeCsv(lines: readonly (readonly CsvField[])[]): string {
	return lines.map((line) => `${line.map(writeField).join(',')}\r\n`).join('');
}

function writeField(value: CsvField): string {
	if (value === undefined) return '';
	if (typeof value === 'number') return String(value);
	const isSafe = /^[+-]?\d+(\.\d+)?$/.test(value) || !/^\s*[=+\-@]|^[\t\r\n]/.test(value);
	const safe = isSafe ? value : `'${value}`;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
