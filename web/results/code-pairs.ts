/** What a file of responses calls a student, and the student code. */
export type CodePair = readonly [name: string, code: string];

/**
 * Reads a list of codes as it is pasted or comes from a spreadsheet: a line a student, the name first, the code last, parted by a
 * comma, a semicolon or a tab. Names may hold commas. Blank lines are left out. Bad lines are told by number, 1 for the first.
 */
export function readCodePairs(text: string): { readonly pairs: readonly CodePair[]; readonly bad: readonly number[] } {
	const pairs: CodePair[] = [];
	const bad: number[] = [];
	for (const [index, line] of text
		.replace(/^\uFEFF/, '')
		.split(/\r?\n/)
		.entries()) {
		if (line.trim() === '') continue;
		const [, name = '', code = ''] = /^(.*)[,;\t](.*)$/.exec(line) ?? [];
		const pair: CodePair = [unquote(name), unquote(code)];
		const isCode = /^[A-Z0-9][A-Z0-9-]{1,23}$/.test(pair[1]);
		if (!isCode && index === 0 && pair[0] !== '') continue;
		if (isCode && pair[0] !== '') pairs.push(pair);
		else bad.push(index + 1);
	}
	return { pairs, bad };
}

function unquote(cell: string): string {
	const bare = cell.trim();
	return /^".*"$/.test(bare) ? bare.slice(1, -1).replaceAll('""', '"').trim() : bare;
}
