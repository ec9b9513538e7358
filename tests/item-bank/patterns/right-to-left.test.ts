import { expect, test } from 'vitest';
import { rightToLeft } from '../../../item-bank/patterns/right-to-left.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Gumpo 2014 (abstract). Worked examples: trade reference, section 5.
test.each([['10 - 4 - 3', 9]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(rightToLeft, text)).toBe(wrong);
});

test.each([
	['10 + 4 + 3', 'the right answer all the same'],
	['10 - 4', 'two numbers'],
	['10 - 4 × 3', 'operations of different rank'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(rightToLeft, text)).toBeUndefined();
});

test('works every chain of equals from the right, × and ÷ still first (our own derivation)', () => {
	expect(wrongAnswerTo(rightToLeft, '20 - 5 - 4 - 3')).toBe(16);
	expect(wrongAnswerTo(rightToLeft, '24 ÷ 4 × 2')).toBe(3);
	expect(wrongAnswerTo(rightToLeft, '20 - 2 × 3 - 4')).toBe(18);
	expect(wrongAnswerTo(rightToLeft, '2 × (10 - 4 - 3)')).toBe(18);
});
