import { expect, test } from 'vitest';
import { computeKey } from '../../../../item-bank/items/key.ts';
import { gapSides } from '../../../../item-bank/items/kinds/inline-choice.ts';
import { score } from '../../../../item-bank/items/score.ts';
import { makeInlineChoice } from '../../../helpers/items.ts';
import { keyCodes } from '../../../helpers/key-codes.ts';

test('the key makes the statement true: a relation, an operation or a number', () => {
	expect(computeKey(makeInlineChoice())).toEqual({ kind: 'options', options: ['a'] });
	const operation = makeInlineChoice({
		statement: '-3 _ (-8) = 5',
		choices: [
			{ id: 'a', math: '+' },
			{ id: 'b', math: '-' },
			{ id: 'c', math: '×' },
		],
	});
	expect(computeKey(operation)).toEqual({ kind: 'options', options: ['b'] });
	const number = makeInlineChoice({
		statement: '3 + (_) = -5',
		choices: [
			{ id: 'a', math: '-8' },
			{ id: 'b', math: '-2' },
		],
	});
	expect(computeKey(number)).toEqual({ kind: 'options', options: ['a'] });
});

test('no true choice, two true choices and unreadable statements are refused', () => {
	expect(
		keyCodes(
			makeInlineChoice({
				choices: [
					{ id: 'a', math: '>' },
					{ id: 'b', math: '=' },
				],
			}),
		),
	).toEqual(['key-missing']);
	expect(
		keyCodes(
			makeInlineChoice({
				choices: [
					{ id: 'a', math: '<' },
					{ id: 'b', math: '≤' },
				],
			}),
		),
	).toEqual(['key-not-unique']);
	expect(
		keyCodes(
			makeInlineChoice({
				statement: '-8 _ 3',
				choices: [
					{ id: 'a', math: '<' },
					{ id: 'b', math: '&' },
				],
			}),
		),
	).toEqual(['expression-syntax']);
	expect(
		keyCodes(
			makeInlineChoice({
				statement: '-8 _ 3',
				choices: [
					{ id: 'a', math: '<' },
					{ id: 'b', math: '+' },
				],
			}),
		),
	).toEqual(['option-not-computable']);
	expect(keyCodes(makeInlineChoice({ key: 'b' }))).toEqual(['key-mismatch']);
});

test('one choice counts, more are invalid', () => {
	expect(score(makeInlineChoice(), { kind: 'choice', options: ['a'] }).state).toBe('correct');
	expect(score(makeInlineChoice(), { kind: 'choice', options: ['b'] }).state).toBe('incorrect');
	expect(score(makeInlineChoice(), { kind: 'choice', options: ['a', 'b'] })).toMatchObject({
		state: 'invalid',
		reason: 'double-mark',
	});
	expect(score(makeInlineChoice(), { kind: 'choice', options: [] }).state).toBe('omitted');
});

test('the sides of the gap carry true signs', () => {
	expect(gapSides(makeInlineChoice({ statement: '-8 * 2 _ -3' }))).toEqual(['−8 × 2', '−3']);
});
