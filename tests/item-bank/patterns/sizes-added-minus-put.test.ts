import { expect, test } from 'vitest';
import { sizesAddedMinusPut } from '../../../item-bank/patterns/sizes-added-minus-put.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Aqazade and Bofferding 2021. Worked examples: trade reference, section 5.
test.each([['-9 + 2', -11]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(sizesAddedMinusPut, text)).toBe(wrong);
});

test.each([
	['9 + 2', 'no sign'],
	['-9 + (-2)', 'the right answer all the same'],
	['-9 - 2', 'a difference'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(sizesAddedMinusPut, text)).toBeUndefined();
});
