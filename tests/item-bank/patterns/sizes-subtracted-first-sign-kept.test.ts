import { expect, test } from 'vitest';
import { sizesSubtractedFirstSignKept } from '../../../item-bank/patterns/sizes-subtracted-first-sign-kept.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Tatsuoka and Baillie, in Bofferding 2010. Worked examples: trade reference, section 5.
test.each([['3 + (-8)', 5]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(sizesSubtractedFirstSignKept, text)).toBe(wrong);
});

test.each([
	['3 + 8', 'no sign'],
	['8 - 3', 'no sign'],
	['0 - 8', 'a first number without sign'],
	['-8 + 3', 'the right answer all the same'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(sizesSubtractedFirstSignKept, text)).toBeUndefined();
});
