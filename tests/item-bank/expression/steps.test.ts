import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countOperations } from '../../../item-bank/expression/count.ts';
import { isEquivalent } from '../../../item-bank/expression/equivalent.ts';
import { EvaluationError, evaluate } from '../../../item-bank/expression/evaluate.ts';
import { normaliseExpression } from '../../../item-bank/expression/normalise.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { printMathematics } from '../../../item-bank/expression/print.ts';
import { stepRows, stepText, workSteps } from '../../../item-bank/expression/steps.ts';
import { numberNode } from '../../../item-bank/expression/tree.ts';
import { valuedExpression } from './arbitraries.ts';

const work = (text: string) => workSteps(parseExpression(text));

describe('workSteps', () => {
	it.each([
		['-3 + -8', 'same-signs-sum', 'Both numbers are negative, so add the sizes, 3 + 8 = 11, and keep the sign: −11.'],
		['3 + 8', 'same-signs-sum', 'Both numbers are positive, so add the sizes, 3 + 8 = 11, and keep the sign: 11.'],
		[
			'3 + -8',
			'different-signs-sum',
			'The signs differ, so subtract the sizes, 8 − 3 = 5, and keep the sign of −8, the number of larger size: −5.',
		],
		['8 + -8', 'opposites-sum', '8 and −8 have equal sizes and different signs, so they make 0, which has no sign.'],
		['-5 + 0', 'adding-zero', '0 adds nothing, so the sum is −5.'],
		['-5 - 0', 'adding-zero', 'Taking away 0 changes nothing: −5.'],
		['8 - 3', 'whole-number-subtraction', 'Taking 3 away from 8 leaves 5.'],
		['3 - 3', 'whole-number-subtraction', 'Taking 3 away from 3 leaves 0.'],
		['-3 × 5', 'unlike-signs-product', 'Unlike signs make a negative product, and 3 × 5 = 15, so the value is −15.'],
		['-3 × -5', 'like-signs-product', 'Like signs make a positive product, and 3 × 5 = 15, so the value is 15.'],
		['0 × -5', 'zero-product', 'A product with the factor 0 is 0, which has no sign.'],
		['-12 ÷ 4', 'unlike-signs-quotient', 'Unlike signs make a negative quotient, and 12 ÷ 4 = 3, so the value is −3.'],
		['-12 ÷ -4', 'like-signs-quotient', 'Like signs make a positive quotient, and 12 ÷ 4 = 3, so the value is 3.'],
		['0 ÷ -5', 'zero-quotient', '0 divided by another number is 0, which has no sign.'],
		['|-9|', 'absolute-value', 'The absolute value of −9 is its distance from 0: 9.'],
		['-(-5)', 'opposite', 'The opposite of −5 is 5, as far from 0 on the other side.'],
		['-(0)', 'opposite', 'The opposite of 0 is 0, which has no sign.'],
	])('%s is worked by %s', (text, rule, explanation) => {
		const steps = work(text);
		expect(steps.map((step) => [step.rule, step.explanation])).toStrictEqual([[rule, explanation]]);
		expect(steps[0]?.broughtDown).toBe('');
		expect(steps[0]?.rewritten).toBeUndefined();
	});

	it.each([
		['3 - 8', '3 + (−8)', 'different-signs-sum'],
		['3 - -8', '3 + 8', 'same-signs-sum'],
		['-3 - 8', '−3 + (−8)', 'same-signs-sum'],
		['-8 - -8', '−8 + 8', 'opposites-sum'],
		['0 - 8', '0 + (−8)', 'adding-zero'],
	])('%s is written as %s and then worked by %s', (text, rewritten, sumRule) => {
		const [step] = work(text);
		expect(step?.rule).toBe('subtraction-as-adding-the-opposite');
		expect(step?.sumRule).toBe(sumRule);
		expect(step?.rewritten && printMathematics(step.rewritten)).toBe(rewritten);
	});

	it.each([
		['2 + 3 × -4', ['2 + (−12)', '−10']],
		['20 - 8 - 5', ['12 − 5', '7']],
		['24 ÷ 2 × 3', ['12 × 3', '36']],
		['2 × 3 + (4 - 9)', ['2 × 3 + (−5)', '6 + (−5)', '1']],
		['2 × 3 + 4 × 5', ['6 + 4 × 5', '6 + 20', '26']],
		['-2 × (3 - 8 × 2)', ['−2 × (3 − 16)', '−2 × (−13)', '26']],
		['5 - |2 - 9|', ['5 − |−7|', '5 − 7', '−2']],
		['-(3 + 4) × 2', ['−(7) × 2', '−7 × 2', '−14']],
		['(1 + 2) × (3 - (4 - 6))', ['3 × (3 − (4 − 6))', '3 × (3 − (−2))', '3 × 5', '15']],
		['-(5) + (2 - 3)', ['−(5) + (−1)', '−5 + (−1)', '−6']],
		['-7', []],
	])('works %s line by line', (text, lines) => {
		expect(work(text).map((step) => printMathematics(step.after))).toStrictEqual(lines);
	});

	it('says what comes first and what is brought down', () => {
		expect(work('2 × (1 - 3 × 4) + 7').map((step) => [step.order, step.broughtDown])).toStrictEqual([
			['inside the parentheses, × and ÷ come before + and −', '2 × (1 − …) + 7'],
			['inside the parentheses', '2 × … + 7'],
			['× and ÷ come before + and −', '… + 7'],
			['', ''],
		]);
		expect(work('|1 - 2 - 3|').map((step) => step.order)).toStrictEqual([
			'inside the absolute value, from left to right',
			'inside the absolute value',
			'',
		]);
	});

	it('refuses what has no value', () => {
		expect(() => work('3 + 7 ÷ 2')).toThrow(EvaluationError);
		expect(() => workSteps({ kind: 'unknown' })).toThrow(EvaluationError);
	});

	it('keeps the value at every step, takes one step for each operation and ends at the value', () => {
		fc.assert(
			fc.property(valuedExpression(), (tree) => {
				const steps = workSteps(tree);
				const value = evaluate(tree);
				expect(steps.length).toBe(countOperations(tree));
				expect(steps.at(-1)?.after ?? normaliseExpression(tree)).toStrictEqual(numberNode(value));
				steps.forEach((step, index) => {
					expect(step.before).toStrictEqual(index === 0 ? normaliseExpression(tree) : steps[index - 1]?.after);
					expect(evaluate(step.before)).toBe(value);
					expect(evaluate(step.after)).toBe(value);
					expect(evaluate(step.part)).toBe(step.value);
					expect(countOperations(step.after)).toBe(countOperations(step.before) - 1);
					expect(step.explanation).toMatch(/^[A-Z0-9×|−].*[^.]\.$/);
					if (step.rewritten) expect(isEquivalent(step.before, step.rewritten)).toBe(true);
				});
			}),
			{ numRuns: 500 },
		);
	});
});

describe('stepRows and stepText', () => {
	it('give the rewritten subtraction a line of its own', () => {
		expect(stepRows(parseExpression('2(3-8)'))).toStrictEqual([
			{ line: '2 × (3 − 8)', note: '' },
			{
				line: '2 × (3 + (−8))',
				note: 'Inside the parentheses: subtracting 8 is adding its opposite, so 3 − 8 becomes 3 + (−8).',
			},
			{
				line: '2 × (−5)',
				note: 'The signs differ, so subtract the sizes, 8 − 3 = 5, and keep the sign of −8, the number of larger size: −5.',
			},
			{ line: '−10', note: 'Unlike signs make a negative product, and 2 × 5 = 10, so the value is −10.' },
		]);
	});

	it('print one line for each row', () => {
		expect(stepText(parseExpression('-3 + -8 + 1'))).toBe(
			[
				'−3 + (−8) + 1',
				'= −11 + 1  [From left to right: both numbers are negative, so add the sizes, 3 + 8 = 11, and keep the sign: −11.]',
				'= −10  [The signs differ, so subtract the sizes, 11 − 1 = 10, and keep the sign of −11, the number of larger size: −10.]',
			].join('\n'),
		);
		expect(stepText(parseExpression('-7'))).toBe('−7');
	});
});
