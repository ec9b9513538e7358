import { expect, test } from 'vitest';
import { wallAtZero } from '../../../item-bank/patterns/wall-at-zero.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Bofferding 2014. Worked examples: trade reference, section 5.
test.each([['3 - 5', 0]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(wallAtZero, text)).toBe(wrong);
});

test.each([
	['5 - 3', 'nothing below zero'],
	['-3 - 5', 'a start below zero'],
	['3 + (-5)', 'a sum'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(wallAtZero, text)).toBeUndefined();
});
