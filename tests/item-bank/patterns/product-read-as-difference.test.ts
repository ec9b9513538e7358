import { expect, test } from 'vitest';
import { productReadAsDifference } from '../../../item-bank/patterns/product-read-as-difference.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked examples: trade reference, section 5.
test.each([['5(-3)', 2]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(productReadAsDifference, text)).toBe(wrong);
});

test.each([
	['5 × 3', 'no negative'],
	['-5 × 3', 'a positive second factor'],
	['12 ÷ (-3)', 'a quotient'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(productReadAsDifference, text)).toBeUndefined();
});
