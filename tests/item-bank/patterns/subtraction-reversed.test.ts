import { expect, test } from 'vitest';
import { subtractionReversed } from '../../../item-bank/patterns/subtraction-reversed.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked examples: trade reference, section 5.
test.each([['-2 - 6', 8]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(subtractionReversed, text)).toBe(wrong);
});

test.each([
	['9 - 2', 'whole-number subtraction'],
	['-3 + 5', 'a sum'],
	['-3 - (-3)', 'the right answer all the same'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(subtractionReversed, text)).toBeUndefined();
});
