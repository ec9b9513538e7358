import { createRequire } from 'node:module';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakLines, sansWidth } from '../../../item-bank/plots/text-width.ts';
import { readFont } from '../../helpers/font-file.ts';

const file = createRequire(import.meta.url).resolve(
	'@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
);
const printable = Array.from({ length: 95 }, (_unused, index) => String.fromCharCode(32 + index));

test('every character is as wide as in the font file', () => {
	const font = readFont(file);
	for (const character of [...printable, ...'−×÷–·’“”…']) {
		expect([character, sansWidth(character, 1)]).toEqual([character, expect.closeTo(font.advanceOf(character), 3)]);
	}
});

test('lines keep every word in order and fit where more than one word stands in them', () => {
	fc.assert(
		fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 }), (words) => {
			const lines = breakLines(words.join(' '), 14, 90);
			expect(lines.join(' ')).toBe(words.join(' '));
			for (const line of lines) if (line.includes(' ')) expect(sansWidth(line, 14)).toBeLessThanOrEqual(90);
		}),
	);
});
