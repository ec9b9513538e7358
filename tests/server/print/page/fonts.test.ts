import { describe, expect, test } from 'vitest';
import { fontNames, missingCharacters, textWidth } from '../../../../server/print/page/fonts.ts';

describe('the printed fonts', () => {
	test.each(fontNames)('%s has every sign that items and instructions use', (font) => {
		expect(missingCharacters('0123456789ABCXYZabcxyz.,:;?!()|+−×÷=<>≤≥°–“”‘’·…é*', font)).toEqual([]);
	});

	test.each(fontNames)('%s is known to lack a snowman, a Chinese sign and a smiley', (font) => {
		expect(missingCharacters('a☃b雪c😀a☃', font)).toEqual(['☃', '雪', '😀']);
	});

	test('widths are those of the font file: digits of the serif are 529 of 1000 wide (hmtx)', () => {
		expect(textWidth('7', 'serif', 1000)).toBeCloseTo(529, 0);
		expect(textWidth('77', 'serif', 10)).toBeCloseTo(10.58, 2);
	});
});
