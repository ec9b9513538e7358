import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import {
	findPattern,
	getPattern,
	patterns,
	sumPatternIds,
	UnknownPatternError,
} from '../../../item-bank/patterns/index.ts';
import { findWrongAnswer, isSameAnswer, subjectKindsOf } from '../../../item-bank/patterns/pattern.ts';
import { findRightAnswer, type Subject, subjectOf, twoNumbers } from '../../../item-bank/patterns/subject.ts';
import { anyExpression, findValue } from '../expression/arbitraries.ts';

const operators = ['add', 'subtract', 'multiply', 'divide'] as const;
const integer = fc.integer({ min: -999_999, max: 999_999 });
const anySubject: fc.Arbitrary<Subject> = fc.oneof(
	anyExpression(true).map((expression): Subject => ({ kind: 'expression', expression })),
	anyExpression(true).map(subjectOf),
	fc
		.tuple(fc.constantFrom(...operators), integer, integer)
		.map(([operator, left, right]) => twoNumbers(operator, left, right)),
	fc.uniqueArray(integer, { minLength: 2, maxLength: 6 }).map((numbers): Subject => ({ kind: 'ordering', numbers })),
	fc.tuple(integer, integer).map(([from, to]): Subject => ({ kind: 'distance', from, to })),
	fc.tuple(fc.nat(40), fc.nat(40)).map(([plus, minus]): Subject => ({ kind: 'counter-set', plus, minus })),
	fc
		.tuple(fc.integer({ min: -50, max: 50 }), fc.array(fc.integer({ min: -50, max: 50 }), { maxLength: 6 }))
		.map(([start, moves]): Subject => ({ kind: 'walk', start, moves, tickEvery: 1 })),
	integer.map((of): Subject => ({ kind: 'absolute-value', of })),
	integer.map((of): Subject => ({ kind: 'opposite-number', of })),
	integer.map((value): Subject => ({ kind: 'grid-entry', value })),
);

describe('the registry of error patterns', () => {
	test('holds 26 patterns with ids of their own', () => {
		expect(patterns).toHaveLength(26);
		expect(new Set(patterns.map(({ id }) => id)).size).toBe(26);
		expect(sumPatternIds).toHaveLength(15);
	});

	test.each(patterns.map((pattern) => [pattern.id, pattern] as const))(
		'%s says what it is consistent with, and where it is from',
		(_, pattern) => {
			expect(pattern.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
			expect(pattern.sentence).toMatch(/^Consistent with [^.]+\.$/);
			expect(`${pattern.name} ${pattern.sentence}`).not.toMatch(/\b(has|bug|misconception)\b/i);
			expect(pattern.source).not.toBe('');
			if (pattern.source === 'common practice, no source') expect(pattern.evidence).toBe('practice');
			expect(subjectKindsOf(pattern).length).toBeGreaterThan(0);
		},
	);

	test('finds a pattern by id and says which ids there are when there is none', () => {
		expect(getPattern('wall-at-zero').id).toBe('wall-at-zero');
		expect(findPattern('toString')).toBeUndefined();
		expect(() => getPattern('wall-at-one')).toThrow(UnknownPatternError);
		expect(() => getPattern('wall-at-one')).toThrow(/found "wall-at-one"; .*wall-at-zero/);
	});
});

describe('laws of every pattern', () => {
	test('never throws, and leads to an integer of the bank that is not the right answer, or to nothing', () => {
		fc.assert(
			fc.property(anySubject, fc.constantFrom(...patterns), (subject, pattern) => {
				const wrong = findWrongAnswer(pattern, subject);
				if (wrong === undefined) return;
				const right = findRightAnswer(subject);
				if (right === undefined) throw new Error('expected a right answer beside a wrong one');
				expect(isSameAnswer(wrong, right)).toBe(false);
				for (const value of typeof wrong === 'number' ? [wrong] : wrong) {
					expect(Number.isInteger(value) && Math.abs(value) <= 999_999).toBe(true);
					expect(Object.is(value, -0)).toBe(false);
				}
				expect(subjectKindsOf(pattern)).toContain(subject.kind);
			}),
			{ numRuns: 3000 },
		);
	});

	test('leaves whole-number arithmetic alone, the patterns of number lines and of grouping apart', () => {
		const ofSigns = patterns.filter(
			({ id }) => !['start-tick-counted', 'zero-skipped', 'detached-minus', 'right-to-left'].includes(id),
		);
		fc.assert(
			fc.property(fc.nat(99), fc.nat(99), fc.constantFrom(...ofSigns), (less, more, pattern) => {
				for (const [operator, left] of [
					['add', more],
					['subtract', less + more],
					['multiply', more],
				] as const) {
					expect(findWrongAnswer(pattern, twoNumbers(operator, left, less))).toBeUndefined();
				}
			}),
		);
	});

	test('right answers are the values of the expressions', () => {
		fc.assert(
			fc.property(anyExpression(true), (expression) => {
				expect(findRightAnswer({ kind: 'expression', expression })).toBe(findValue(expression));
				expect(findRightAnswer(subjectOf(expression))).toBe(findValue(expression));
			}),
		);
	});

	test('two numbers and the same two numbers as an expression are the same to every pattern', () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...operators),
				fc.integer({ min: -30, max: 30 }),
				fc.integer({ min: -30, max: 30 }),
				(operator, left, right) => {
					const leaf = (value: number) => ({ kind: 'number' as const, value });
					const expression = { kind: 'operation' as const, operator, left: leaf(left), right: leaf(right) };
					for (const pattern of patterns) {
						expect(findWrongAnswer(pattern, { kind: 'expression', expression })).toBe(
							findWrongAnswer(pattern, twoNumbers(operator, left, right)),
						);
					}
				},
			),
		);
	});
});

describe('longer expressions', () => {
	// Working: −9 − 4 + 7, step by step; demo values worked by hand.
	test.each([
		['two-minuses-make-plus', 20], // 9 + 4 = 13, 13 + 7 = 20
		['sizes-added-minus-put', -20], // −9 − 4 = −13 (a difference), −(13 + 7) = −20
		['subtraction-reversed', 20], // 4 − (−9) = 13, 13 + 7 = 20
		['operation-changed-sign-kept', 2], // −9 + 4 = −5, −5 + 7 = 2
		['leading-minus-parked', -12], // −(9 − 4) = −5, −(5 + 7) = −12
		['detached-minus', -20], // −9 − (4 + 7)
		['right-to-left', -20], // −9 − (4 + 7)
	] as const)('%s is made at every step of -9 - 4 + 7 and leads to %i', (id, wrong) => {
		expect(findWrongAnswer(getPattern(id), subjectOf(parseExpression('-9 - 4 + 7')))).toBe(wrong);
	});

	test('follow the order of operations: × before −', () => {
		// The product of the sizes is 6; then 5 − 6 has no sign to drop and is −1.
		expect(findWrongAnswer(getPattern('signs-dropped'), subjectOf(parseExpression('5 - 2 × (-3)')))).toBe(-1);
	});

	test('lead nowhere when a step comes to no integer of the bank', () => {
		// −6 − 4 becomes −2, and −2 ÷ 5 leaves a remainder; −6 − 2 becomes −4, and 8 ÷ (−4) is −2 (right: −1).
		expect(
			findWrongAnswer(getPattern('operation-changed-sign-kept'), subjectOf(parseExpression('(-6 - 4) ÷ 5'))),
		).toBeUndefined();
		expect(findWrongAnswer(getPattern('operation-changed-sign-kept'), subjectOf(parseExpression('8 ÷ (-6 - 2)')))).toBe(
			-2,
		);
	});
});
