import { expect, test } from 'vitest';
import { sumRuleInProduct } from '../../../item-bank/patterns/sum-rule-in-product.ts';
import { wrongAnswerTo } from './wrong-answer-to.ts';

// Source of the rule: Makonye and Hantibi 2014 (abstract); in detail common practice, no source. Worked examples: trade reference, section 5.
test.each([
	['-3 × (-5)', -15],
	['-3 × 5', 15],
])('%s leads to %i', (text, wrong) => {
	expect(wrongAnswerTo(sumRuleInProduct, text)).toBe(wrong);
});

test.each([
	['-5 × 5', 'equal sizes'],
	['3 × (-5)', 'the right answer all the same'],
	['-3 + (-5)', 'a sum'],
	['-7 ÷ (-2)', 'no answer in the bank'],
])('does not apply to %s: %s', (text) => {
	expect(wrongAnswerTo(sumRuleInProduct, text)).toBeUndefined();
});

test('takes the sign of the larger size in a quotient (our own derivation)', () => {
	expect(wrongAnswerTo(sumRuleInProduct, '-72 ÷ (-8)')).toBe(-9);
	expect(wrongAnswerTo(sumRuleInProduct, '72 ÷ (-8)')).toBe(9);
});
