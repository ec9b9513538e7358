import { expect, test } from 'vitest';
import { largerMinusSmaller } from '../../../item-bank/patterns/larger-minus-smaller.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Aqazade and Bofferding 2021. Worked examples: trade reference, section 5.
test.each([['3 - 9', 6]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(largerMinusSmaller, text)).toBe(wrong);
});

test.each([
	['9 + 3', 'no sign'],
	['9 + (-3)', 'the right answer all the same'],
	['-9 × 3', 'a product'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(largerMinusSmaller, text)).toBeUndefined();
});
