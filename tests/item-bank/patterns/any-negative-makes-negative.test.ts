import { expect, test } from 'vitest';
import { anyNegativeMakesNegative } from '../../../item-bank/patterns/any-negative-makes-negative.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked examples: trade reference, section 5.
test.each([['-3 × (-5)', -15]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(anyNegativeMakesNegative, text)).toBe(wrong);
});

test.each([
	['-3 × 5', 'the right answer all the same'],
	['3 × 5', 'no negative'],
	['0 × (-5)', 'zero'],
	['-3 + (-5)', 'a sum'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(anyNegativeMakesNegative, text)).toBeUndefined();
});

test('makes a quotient of negatives negative (our own derivation)', () => {
	expect(wrongAnswerTo(anyNegativeMakesNegative, '-72 ÷ (-8)')).toBe(-9);
});
