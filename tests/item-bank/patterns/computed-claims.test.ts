import { expect, test } from 'vitest';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { getPattern, patterns, sumPatternIds } from '../../../item-bank/patterns/index.ts';
import { findWrongAnswer, type PatternId } from '../../../item-bank/patterns/pattern.ts';
import { listPool } from '../../../item-bank/patterns/probes.ts';
import { subjectOf, type TwoNumbers, twoNumbers } from '../../../item-bank/patterns/subject.ts';
import { workRight } from '../../../item-bank/patterns/work.ts';

// Source of every claim: our own enumeration over operands −12 to 12 without 0 (trade reference, section 5).

const wrongTo = (id: PatternId, { operator, left, right }: TwoNumbers) =>
	findWrongAnswer(getPattern(id), twoNumbers(operator, left, right));
const wrongAnswers = (item: TwoNumbers, ids: readonly PatternId[]): ReadonlySet<unknown> =>
	new Set(ids.map((id) => wrongTo(id, item)).filter((wrong) => wrong !== undefined));
const products = listPool('multiply');
const productPatterns: readonly PatternId[] = patterns
	.map(({ id }) => id)
	.filter((id) => products.some((item) => wrongTo(id, item) !== undefined));

test('for a − (−b), second-minus-lost, operation-changed-sign-kept and direction-by-operation always agree', () => {
	const items = listPool('subtract').filter(({ right }) => right < 0);
	expect(items).toHaveLength(24 * 12);
	for (const item of items) {
		const wrong = wrongTo('second-minus-lost', item);
		expect(wrong).toBeDefined();
		expect(wrongTo('operation-changed-sign-kept', item)).toBe(wrong);
		expect(wrongTo('direction-by-operation', item)).toBe(wrong);
	}
});

test('subtraction-reversed and sign-left-off agree on a grid exactly when the answer is negative', () => {
	for (const item of listPool('subtract')) {
		const value = workRight(item) ?? 0;
		const reversed = wrongTo('subtraction-reversed', item);
		const unsigned = findWrongAnswer(getPattern('sign-left-off'), { kind: 'grid-entry', value });
		if (value < 0) expect(reversed).toBe(-value);
		expect(unsigned).toBe(value < 0 ? reversed : undefined);
	}
});

test('a product with one negative factor has at most two distinct wrong answers', () => {
	expect(productPatterns).toEqual([
		'signs-dropped',
		'sum-rule-in-product',
		'any-negative-makes-negative',
		'product-read-as-difference',
	]);
	const most = (isOf: (item: TwoNumbers) => boolean) =>
		Math.max(
			...listPool('multiply')
				.filter(isOf)
				.map((item) => wrongAnswers(item, productPatterns).size),
		);
	expect(most(({ left, right }) => left * right < 0)).toBe(2);
	expect(most(({ left, right }) => left < 0 && right > 0)).toBe(1);
	expect(most(({ left, right }) => left < 0 && right < 0)).toBe(2);
});

test('equal sizes merge patterns: unequal ones lead to more distinct wrong answers, whatever the signs and operation', () => {
	for (const operator of ['add', 'subtract'] as const) {
		for (const [signLeft, signRight] of [
			[1, -1],
			[-1, 1],
			[-1, -1],
		] as const) {
			const sized = (larger: number, smaller: number) => ({
				operator,
				left: signLeft * larger,
				right: signRight * smaller,
			});
			const equal = wrongAnswers(sized(7, 7), sumPatternIds).size;
			expect(equal).toBeLessThan(
				Math.max(wrongAnswers(sized(9, 5), sumPatternIds).size, wrongAnswers(sized(5, 9), sumPatternIds).size),
			);
		}
	}
});

test('the numbers 1 and 2 merge patterns that larger ones keep apart', () => {
	// 2 × (−2): 2 − 2 = 0 apart, as a product read as a difference; 3 + (−1): one tick is the whole second number.
	expect(wrongTo('signs-dropped', { operator: 'multiply', left: -2, right: -2 })).toBeUndefined();
	expect(wrongTo('product-read-as-difference', { operator: 'multiply', left: -2, right: -2 })).toBe(-4);
	expect(wrongTo('any-negative-makes-negative', { operator: 'multiply', left: -2, right: -2 })).toBe(-4);
	const generic: TwoNumbers = { operator: 'multiply', left: -3, right: -5 };
	expect(wrongTo('product-read-as-difference', generic)).not.toBe(wrongTo('any-negative-makes-negative', generic));
});

test('detachment is invisible in a + b − c and visible in a − b + c and a − b − c', () => {
	const detached = (text: string) => findWrongAnswer(getPattern('detached-minus'), subjectOf(parseExpression(text)));
	for (const { left, right } of listPool('add')) {
		expect(detached(`${left} + (${right}) - 5`)).toBeUndefined();
		expect(detached(`${left} - (${right}) + 5`)).toBe(left - (right + 5));
		expect(detached(`${left} - (${right}) - 5`)).toBe(left - (right - 5));
	}
});
