/** Advance widths in thousandths of an em, with the characters that share them: the hmtx table of Source Sans 3 Regular. A test compares them with the font file. */
const advances: readonly (readonly [number, string])[] = [
	[200, ' '],
	[241, '|'],
	[246, 'i'],
	[247, 'j'],
	[249, "',.:;·’"],
	[255, 'l'],
	[263, 'I'],
	[289, '!'],
	[292, 'f'],
	[303, '()[]{}'],
	[311, '-'],
	[338, 't'],
	[347, 'r'],
	[350, '/\\'],
	[418, '*'],
	[419, 's'],
	[425, '?z'],
	[426, '"“”'],
	[446, 'x'],
	[456, 'c'],
	[467, 'vy'],
	[476, 'Y'],
	[479, 'J'],
	[480, '–'],
	[486, 'L'],
	[494, 'F'],
	[495, 'k'],
	[496, 'e'],
	[497, '#$+0123456789<=>^~−×÷'],
	[500, '_'],
	[504, 'ag'],
	[513, 'X'],
	[515, 'V'],
	[527, 'E'],
	[534, 'S'],
	[536, 'T'],
	[539, 'Z'],
	[542, '`o'],
	[543, 'A'],
	[544, 'hu'],
	[547, 'n'],
	[553, 'b'],
	[555, 'dpq'],
	[566, 'P'],
	[569, 'R'],
	[571, 'C'],
	[579, 'K'],
	[588, 'B'],
	[609, '&'],
	[615, 'D'],
	[617, 'G'],
	[645, 'U'],
	[647, 'N'],
	[652, 'H'],
	[664, 'OQ'],
	[719, 'w'],
	[727, 'M'],
	[786, 'W'],
	[824, '%'],
	[829, 'm'],
	[847, '@'],
	[948, '…'],
];

const byCharacter: ReadonlyMap<string, number> = new Map(
	advances.flatMap(([width, characters]) => [...characters].map((character) => [character, width] as const)),
);

/** Width in px of a text set in Source Sans 3 Regular at `size` px, without kerning; a character of no known width counts as a wide one. */
export function sansWidth(text: string, size: number): number {
	let sum = 0;
	for (const character of text) sum += byCharacter.get(character) ?? 850;
	return (sum * size) / 1000;
}

/** Breaks a text at its blanks into lines that fit a width in px; a single word that does not fit stands alone. */
export function breakLines(text: string, size: number, width: number): readonly string[] {
	const lines: string[] = [];
	for (const word of text.split(' ')) {
		const last = lines.at(-1);
		if (last !== undefined && sansWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
		else lines.push(word);
	}
	return lines;
}
