/**
 * Student codes of a class list in CSV (RFC 4180) or one to a line: the column headed "student", "code" or "student code",
 * else the first. Blank lines are left out, an empty cell stays in for the printing to refuse by its place.
 */
export function readClassList(text: string): readonly string[] {
	const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
	const rows = lines.filter((line) => line.trim() !== '').map(readRow);
	const [first = []] = rows;
	const headed = first.findIndex((cell) => /^(student|code|student[ _-]code)$/i.test(cell));
	const column = Math.max(0, headed);
	return (headed < 0 ? rows : rows.slice(1)).map((row) => row[column] ?? '');
}

/** Cells of a line, without blanks around them and without their quotation marks. */
function readRow(line: string): readonly string[] {
	const cells = line.match(/("(?:[^"]|"")*"|[^,;]*)(?:[,;]|$)/g) ?? [];
	return cells
		.slice(0, /[,;]$/.test(line) ? undefined : -1)
		.map((cell) => cell.replace(/[,;]$/, '').trim())
		.map((cell) => (cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell));
}
