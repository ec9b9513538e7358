import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chooseDistractors } from '../../../item-bank/distractors/choose-distractors.ts';
import { parseExpression } from '../../../item-bank/expression/parse.ts';
import { findRightAnswer, type Subject, subjectOf, twoNumbers } from '../../../item-bank/patterns/subject.ts';
import { listWrongAnswers } from '../../../item-bank/patterns/wrong-answers.ts';

function choose(text: string, count = 3, rest: { readonly wanted?: number; readonly seed?: string } = {}) {
	const subject = subjectOf(parseExpression(text));
	return chooseDistractors(subject, rightOf(subject), { count, ...rest });
}

function rightOf(subject: Subject): number {
	const right = findRightAnswer(subject);
	if (typeof right !== 'number') throw new Error('expected a subject with a number as its answer');
	return right;
}

const valuesOf = ({ options }: ReturnType<typeof chooseDistractors>) => options.map(({ value }) => value);
const negatives = (values: readonly number[]) => values.filter((value) => value < 0).length;
const positives = (values: readonly number[]) => values.filter((value) => value > 0).length;

const number = fc.integer({ min: -30, max: 30 }).filter((value) => Math.abs(value) > 2);
const anyText = fc
	.tuple(number, fc.constantFrom('+', '-', '×'), number, fc.constantFrom('', '+', '-'), number)
	.map(([a, first, b, second, c]) => `${a} ${first} (${b})${second === '' ? '' : ` ${second} (${c})`}`);

describe('choosing distractors', () => {
	test('takes wrong answers of common patterns on both sides of zero, in increasing order', () => {
		expect(valuesOf(choose('-5 - (-12)'))).toEqual([-17, -7, 7, 17]);
		expect(valuesOf(choose('-9 + 2'))).toEqual([-11, -7, 7, 11]);
		expect(valuesOf(choose('4 - 11'))).toEqual([-15, -7, 7, 15]);
	});

	test('gives each wrong option all its patterns and their sentences, and the key none', () => {
		const { options, keyPosition } = choose('-9 + 2');
		expect(keyPosition).toBe(1);
		expect(options[0]).toEqual({
			value: -11,
			isKey: false,
			patterns: ['leading-minus-parked', 'sizes-added-minus-put', 'product-rule-in-sum'],
			feedback:
				'Consistent with setting the leading minus aside, working with the rest, and putting the minus back in front; ' +
				'or with adding the sizes and putting a minus in front, whatever the signs; ' +
				'or with adding the sizes and taking the sign that a product of the two numbers would have.',
		});
		expect(options[1]).toEqual({ value: -7, isKey: true, patterns: [], feedback: '' });
	});

	test('puts the key where it is wanted by taking other patterns, and elsewhere only when none do that', () => {
		for (const wanted of [0, 1, 2]) expect(choose('3 + (-8)', 3, { wanted }).keyPosition).toBe(wanted);
		expect(choose('-3 + (-8)', 3, { wanted: 3 }).keyPosition).toBe(0);
	});

	test('does not leave the key as the only negative number where another set hides it', () => {
		// Among all sets of two, 15 and 49 separate most, but with them −23 would be the only negative number.
		const values = valuesOf(choose('13 + (-17) + (-19)', 2));
		expect(values).toContain(-23);
		expect(negatives(values)).toBeGreaterThan(1);
	});

	test('offers fewer options and says why, rather than numbers that mean nothing', () => {
		const product = choose('6 × (-7)');
		expect(valuesOf(product)).toEqual([-42, -1, 42]);
		expect(product.shortfall).toBe('expected 3 wrong numbers that a pattern leads to, found -1, 42');
		expect(choose('6 × (-7)', 2).shortfall).toBeUndefined();
		expect(choose('6 × 7')).toEqual({
			options: [{ value: 42, isKey: true, patterns: [], feedback: '' }],
			keyPosition: 0,
			isSignBalanced: false,
			shortfall: 'expected 3 wrong numbers that a pattern leads to, found none',
		});
	});

	test('leaves out sizes nobody would believe', () => {
		// Signs dropped lead to 12 × (5 + 5) = 120, more than 2 · (12 + 5 + 5) = 44.
		for (const value of valuesOf(choose('12 × (5 + (-5))', 7))) expect(Math.abs(value)).toBeLessThanOrEqual(44);
	});

	test('uses every reading of the item that it is given', () => {
		const subjects: readonly Subject[] = [twoNumbers('add', 3, -8), { kind: 'counter-set', plus: 3, minus: 8 }];
		const { options } = chooseDistractors(subjects, -5, { count: 3 });
		expect(options.find(({ value }) => value === 11)?.patterns).toEqual([
			'signs-dropped',
			'direction-by-operation',
			'all-counters-counted',
		]);
	});

	test('leaves grid slips to grids', () => {
		const subjects: readonly Subject[] = [twoNumbers('add', -3, -8), { kind: 'grid-entry', value: -11 }];
		for (const { patterns } of chooseDistractors(subjects, -11, { count: 7 }).options)
			expect(patterns).not.toContain('sign-left-off');
	});
});

describe('laws of chosen distractors', () => {
	test('options increase, are distinct, hold the key once at its place, and come from patterns alone', () => {
		fc.assert(
			fc.property(
				anyText,
				fc.integer({ min: 1, max: 5 }),
				fc.option(fc.nat(5), { nil: undefined }),
				(text, count, wanted) => {
					const subject = subjectOf(parseExpression(text));
					const key = rightOf(subject);
					const choice = chooseDistractors(subject, key, wanted === undefined ? { count } : { count, wanted });
					const values = valuesOf(choice);
					expect(values).toEqual([...new Set(values)].sort((a, b) => a - b));
					expect(choice.options.filter(({ isKey }) => isKey)).toEqual([choice.options[choice.keyPosition]]);
					expect(values[choice.keyPosition]).toBe(key);
					const wrong = new Map(listWrongAnswers(subject).map(({ answer, patterns }) => [answer, patterns]));
					for (const { value, isKey, patterns } of choice.options)
						if (!isKey) expect(patterns).toEqual(wrong.get(value));
					expect(values.length - 1 === count).toBe(choice.shortfall === undefined);
				},
			),
		);
	});

	test('the key stands alone by its sign only where every believable set would leave it so', () => {
		fc.assert(
			fc.property(anyText, (text) => {
				const key = rightOf(subjectOf(parseExpression(text)));
				const values = valuesOf(choose(text));
				const isLone = (key < 0 && negatives(values) === 1) || (key > 0 && positives(values) === 1);
				if (!isLone) return;
				const all = valuesOf(choose(text, 7));
				expect(key < 0 ? negatives(all) : positives(all)).toBe(1);
			}),
		);
	});

	test('says truly whether a sign stands alone', () => {
		fc.assert(
			fc.property(anyText, (text) => {
				const choice = choose(text);
				expect(choice.isSignBalanced).toBe(negatives(valuesOf(choice)) !== 1 && positives(valuesOf(choice)) !== 1);
			}),
		);
	});

	test('the same order gives the same options, and seeds give different ones that are about as good', () => {
		fc.assert(
			fc.property(anyText, fc.string(), (text, seed) => {
				expect(choose(text, 3, { seed })).toEqual(choose(text, 3, { seed }));
			}),
		);
		const lists = ['-5 - (-12)', '8 - 3 + (-12)', '6 × (-7) + 20', '-9 + 14', '-7 + (-12)'].map(
			(text) =>
				new Set(Array.from({ length: 20 }, (_, seed) => valuesOf(choose(text, 3, { seed: `${seed}` })).join(' '))).size,
		);
		expect(Math.max(...lists)).toBeGreaterThan(1);
	});
});
