/** A field of a line; undefined is an empty one. */
export type CsvField = string | number | undefined;

/** Lines as CSV by RFC 4180. Texts that a spreadsheet would run as a formula get an apostrophe. */
export function writeCsv(lines: readonly (readonly CsvField[])[]): string {
	return lines.map((line) => `${line.map(writeField).join(',')}\r\n`).join('');
}

function writeField(value: CsvField): string {
	if (value === undefined) return '';
	if (typeof value === 'number') return String(value);
	const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
