import { expect, test } from 'vitest';
import { twoMinusesMakePlus } from '../../../item-bank/patterns/two-minuses-make-plus.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Bofferding 2010. Worked examples: trade reference, section 5.
test.each([
	['-1 + (-5)', 6],
	['-3 - 5', 8],
])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(twoMinusesMakePlus, text)).toBe(wrong);
});

test.each([
	['3 - 8', 'one minus'],
	['3 - (-8)', 'the right answer all the same'],
	['-3 × (-8)', 'a product'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(twoMinusesMakePlus, text)).toBeUndefined();
});
