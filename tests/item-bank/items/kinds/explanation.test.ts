import { expect, test } from 'vitest';
import { computeKey } from '../../../../item-bank/items/key.ts';
import { score } from '../../../../item-bank/items/score.ts';
import { makeExplanation } from '../../../helpers/items.ts';
import { keyCodes } from '../../../helpers/key-codes.ts';

test('no computation decides: the key is the rubric, which runs from the points down to 0', () => {
	expect(computeKey(makeExplanation())).toEqual({ kind: 'rubric' });
	expect(keyCodes(makeExplanation({ points: 3 }))).toEqual(['rubric-range']);
	const rubric = makeExplanation().rubric;
	expect(
		keyCodes(
			makeExplanation({ rubric: [...rubric.slice(0, 2), { points: 1, descriptor: 'Again.' }, ...rubric.slice(2)] }),
		),
	).toEqual(['rubric-order']);
});

test('a response stays unrated until a scorer rates it by a level of the rubric', () => {
	const text = 'Taking away a negative is adding.';
	expect(score(makeExplanation(), { kind: 'explanation', text }).state).toBe('unrated');
	expect(score(makeExplanation(), { kind: 'explanation', text: ' ' }).state).toBe('omitted');
	expect(score(makeExplanation(), { kind: 'explanation', text, rating: 2 })).toMatchObject({
		state: 'correct',
		points: 2,
	});
	expect(score(makeExplanation(), { kind: 'explanation', text, rating: 1 })).toMatchObject({
		state: 'partly',
		points: 1,
	});
	expect(score(makeExplanation(), { kind: 'explanation', text, rating: 0 })).toMatchObject({
		state: 'incorrect',
		points: 0,
	});
	expect(score(makeExplanation(), { kind: 'explanation', text, rating: 3 })).toMatchObject({ state: 'invalid' });
});
