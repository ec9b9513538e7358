import { expect, test } from 'vitest';
import { bothNumbersFlipped } from '../../../item-bank/patterns/both-numbers-flipped.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked examples: trade reference, section 5.
test.each([['7 - (-2)', -5]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(bothNumbersFlipped, text)).toBe(wrong);
});

test.each([
	['7 - 2', 'whole-number subtraction'],
	['-7 + 2', 'a sum'],
	['7 × (-2)', 'a product'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(bothNumbersFlipped, text)).toBeUndefined();
});
