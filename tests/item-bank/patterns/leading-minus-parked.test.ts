import { expect, test } from 'vitest';
import { leadingMinusParked } from '../../../item-bank/patterns/leading-minus-parked.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Vlassis 2004; Fagnant et al. 2005; Schwarz et al. 1993; all in Bofferding 2010. Worked examples: trade reference, section 5.
test.each([
	['-5 + 3', -8],
	['-5 - 3', -2],
])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(leadingMinusParked, text)).toBe(wrong);
});

test.each([
	['5 - 8', 'no leading minus'],
	['-5 × 3', 'a product'],
	['-3 + 0', 'the right answer all the same'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(leadingMinusParked, text)).toBeUndefined();
});
