import { expect, test } from 'vitest';
import { operationChangedSignKept } from '../../../item-bank/patterns/operation-changed-sign-kept.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: common practice, no source. Worked examples: trade reference, section 5.
test.each([['-6 - 4', -2]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(operationChangedSignKept, text)).toBe(wrong);
});

test.each([
	['6 - 4', 'whole-number subtraction'],
	['-6 + 4', 'a sum'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(operationChangedSignKept, text)).toBeUndefined();
});
