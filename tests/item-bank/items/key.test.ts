import { describe, expect, test } from 'vitest';
import { computeKey, findKey, ItemKeyError } from '../../../item-bank/items/key.ts';
import type { Item } from '../../../item-bank/types.ts';
import { makeChoice, makeGridded, makeMultipleChoice, numberOptions } from '../../helpers/items.ts';

const codesOf = (item: Item): readonly string[] => {
	const finding = findKey(item);
	return 'problems' in finding ? finding.problems.map(({ code }) => code) : [];
};

describe('a gridded key', () => {
	test('is the value of the expression', () => {
		expect(computeKey(makeGridded())).toEqual({ kind: 'value', value: 5 });
	});
	test('is the unknown of a statement', () => {
		expect(computeKey(makeGridded({ expression: '-3 + ? = 5' }))).toEqual({ kind: 'value', value: 8 });
	});
	test('may be typed when it agrees, and is refused with both values when it does not', () => {
		expect(computeKey(makeGridded({ key: 5 }))).toEqual({ kind: 'value', value: 5 });
		const finding = findKey(makeGridded({ key: -11 }));
		expect(finding).toEqual({
			problems: [
				{ code: 'key-mismatch', path: '/key', message: 'the expression "-3 - (-8)" is worth 5, but the key says -11' },
			],
		});
	});
	test('does not exist for an expression that cannot be read or worked', () => {
		expect(codesOf(makeGridded({ expression: '3 +* 4' }))).toEqual(['expression-syntax']);
		expect(codesOf(makeGridded({ expression: '7 / 2' }))).toEqual(['expression-inexact-division']);
		expect(codesOf(makeGridded({ expression: '7 / 0' }))).toEqual(['expression-zero-division']);
		expect(() => computeKey(makeGridded({ expression: '7 / 2' }))).toThrow(ItemKeyError);
	});
});

describe('a key among options', () => {
	test('is the option worth as much as the expression', () => {
		expect(computeKey(makeChoice())).toEqual({ kind: 'options', options: ['b'] });
	});
	test('is compared by value when options are expressions or words with a worth', () => {
		const item = makeChoice({
			options: [
				{ id: 'a', content: { kind: 'text', text: 'up 7', worth: '7' } },
				{ id: 'b', content: { kind: 'text', text: 'down 7', worth: '-7' } },
			],
		});
		expect(computeKey(item)).toEqual({ kind: 'options', options: ['b'] });
	});
	test('is missing, doubled or everything only as a problem', () => {
		expect(codesOf(makeChoice({ options: numberOptions(-11, 7, 11) }))).toEqual(['key-missing']);
		const doubled = makeChoice({
			options: [...numberOptions(-7, 7), { id: 'c', content: { kind: 'mathematics', math: '2 - 9' } }],
		});
		expect(codesOf(doubled)).toEqual(['key-not-unique']);
		const all = makeMultipleChoice({
			options: makeMultipleChoice().options.filter(({ id }) => id === 'a' || id === 'c'),
		});
		expect(codesOf(all)).toEqual(['key-all-options']);
	});
	test('holds every true statement', () => {
		expect(computeKey(makeMultipleChoice())).toEqual({ kind: 'options', options: ['a', 'c'] });
	});
	test('needs statements for true statements, a figure for shown, and worths for words', () => {
		expect(codesOf(makeMultipleChoice({ options: numberOptions(1, 2) }))).toEqual(['option-not-computable']);
		expect(codesOf(makeChoice({ rule: { kind: 'shown' } }))).toEqual(['rule-needs-figure']);
		expect(codesOf(makeChoice({ rule: { kind: 'shows', expression: '3 + 4' } }))).toEqual(['option-not-computable']);
		const words = makeChoice({
			options: ['left', 'right'].map((text, index) => ({ id: 'ab'[index] ?? '', content: { kind: 'text', text } })),
		});
		expect(codesOf(words)).toEqual(['option-not-computable']);
	});
	test('follows the figure that shows the expression', () => {
		const item = makeChoice({
			rule: { kind: 'shows', expression: '-3 + 5' },
			options: [
				{
					id: 'a',
					content: { kind: 'figure', figure: { kind: 'number-line', orientation: 'horizontal', arrows: [3, -5] } },
				},
				{
					id: 'b',
					content: { kind: 'figure', figure: { kind: 'number-line', orientation: 'horizontal', arrows: [-3, 5] } },
				},
			],
		});
		expect(computeKey(item)).toEqual({ kind: 'options', options: ['b'] });
	});
	test('follows the expression that the figure in the stem shows', () => {
		const item = makeChoice({
			rule: { kind: 'shown' },
			stem: [
				{ kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 5 } },
				{ kind: 'paragraph', text: 'Which sum do the counters show?' },
			],
			options: ['3 + (-5)', '3 + 5', '-3 + (-5)'].map((math, index) => ({
				id: 'abc'[index] ?? '',
				content: { kind: 'mathematics', math },
			})),
		});
		expect(computeKey(item)).toEqual({ kind: 'options', options: ['a'] });
	});
	test('may be stated for words, among the options only', () => {
		const options = ['always', 'sometimes', 'never'].map((text, index) => ({
			id: 'abc'[index] ?? '',
			content: { kind: 'text' as const, text },
		}));
		const reason = 'Adding a negative moves left.';
		expect(computeKey(makeChoice({ options, rule: { kind: 'stated', options: ['b'], reason } }))).toEqual({
			kind: 'options',
			options: ['b'],
		});
		expect(codesOf(makeChoice({ options, rule: { kind: 'stated', options: ['d'], reason } }))).toEqual([
			'key-option-unknown',
		]);
	});
	test('is refused when typed otherwise', () => {
		expect(codesOf(makeChoice({ key: 'a' }))).toEqual(['key-mismatch']);
		expect(codesOf(makeMultipleChoice({ key: ['c', 'a'] }))).toEqual([]);
		expect(codesOf(makeMultipleChoice({ key: ['a'] }))).toEqual(['key-mismatch']);
	});
});
