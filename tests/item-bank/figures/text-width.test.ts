import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { capHeight, textWidth } from '../../../item-bank/figures/text-width.ts';
import { readFont } from '../../helpers/font-file.ts';

const file = createRequire(import.meta.url).resolve(
	'@expo-google-fonts/source-serif-4/400Regular/SourceSerif4_400Regular.ttf',
);

const font = readFont(file);

test.each([...'0123456789−+ABCDEFGHIJKLMNOPQRSTUVWXYZ'])('%s is as wide as in the font file', (character) => {
	expect(textWidth(character, 1)).toBeCloseTo(font.advanceOf(character), 5);
});

test('capitals are as high as in the font file', () => {
	expect(capHeight).toBeCloseTo(font.capHeight, 5);
});

test('the width of a text is the sum of its characters, in proportion to its size', () => {
	expect(textWidth('−10', 16)).toBeCloseTo((0.534 + 2 * 0.529) * 16, 10);
});
