import { expect, test } from 'vitest';
import { directionByOperation } from '../../../item-bank/patterns/direction-by-operation.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Bishop et al. 2014 (abstract). Worked examples: trade reference, section 5.
test.each([['2 + (-5)', 7]])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(directionByOperation, text)).toBe(wrong);
});

test.each([
	['-2 + 5', 'a plus with a positive number'],
	['2 × (-5)', 'a product'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(directionByOperation, text)).toBeUndefined();
});
