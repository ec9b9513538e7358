import { expect, test } from 'vitest';
import { productRuleInSum } from '../../../item-bank/patterns/product-rule-in-sum.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Makonye and Hantibi 2014 (abstract). Worked examples: trade reference, section 5.
test.each([
	['-4 + (-6)', 10],
	['-4 + 6', -10],
])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(productRuleInSum, text)).toBe(wrong);
});

test.each([
	['4 + 6', 'no sign'],
	['0 + (-6)', 'a number without sign'],
	['-4 - 6', 'a difference'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(productRuleInSum, text)).toBeUndefined();
});
