/** What a cell of a CSV file can hold. */
export type Field = string | number | undefined;

/** Lines as CSV by RFC 4180 for a spreadsheet. Texts it would run as a formula get an apostrophe; numbers stay numbers. */
export function writeCsv(lines: readonly (readonly Field[])[]): string {
	return `\uFEFF${lines.map((line) => `${line.map(writeField).join(',')}\r\n`).join('')}`;
}

function writeField(value: Field): string {
	if (value === undefined) return '';
	if (typeof value === 'number') return String(value);
	const isSafe = /^[+-]?\d+(\.\d+)?$/.test(value) || !/^\s*[=+\-@]|^[\t\r\n]/.test(value);
	const safe = isSafe ? value : `'${value}`;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
