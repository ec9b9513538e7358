import { expect, test } from 'vitest';
import { secondMinusLost } from '../../../item-bank/patterns/second-minus-lost.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Murray 1985, in Bofferding 2010. Worked examples: trade reference, section 5.
test.each([['8 - (-4)', 4]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(secondMinusLost, text)).toBe(wrong);
});

test.each([
	['8 - 4', 'one minus'],
	['8 + (-4)', 'a sum'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(secondMinusLost, text)).toBeUndefined();
});

test('reads the opposite of a negative number as that number (our own derivation)', () => {
	expect(wrongAnswerTo(secondMinusLost, '-(-30)')).toBe(-30);
	expect(wrongAnswerTo(secondMinusLost, '-(30)')).toBeUndefined();
});
