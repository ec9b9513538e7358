import { expect, test } from 'vitest';
import { checkItem } from '../../../../item-bank/checks/check-item.ts';
import { computeKey } from '../../../../item-bank/items/key.ts';
import { ResponseKindError, score } from '../../../../item-bank/items/score.ts';
import { searchableText } from '../../../../item-bank/items/searchable-text.ts';
import {
	makeChoice,
	makeExplanation,
	makeGridded,
	makeInlineChoice,
	makeMatch,
	makeOrder,
	makePoint,
	makeSet,
} from '../../../helpers/items.ts';

test('sound items of every kind have no problems', () => {
	for (const item of [makePoint(), makeOrder(), makeMatch(), makeInlineChoice(), makeExplanation(), makeSet()])
		expect(checkItem(item)).toEqual([]);
});

test('the key of a set holds the keys of its parts', () => {
	expect(computeKey(makeSet())).toEqual({
		kind: 'parts',
		parts: [
			{ kind: 'options', options: ['b'] },
			{ kind: 'value', value: 5 },
		],
	});
});

test('problems of a part come with its place, and the points must be the sum', () => {
	expect(checkItem(makeSet({ parts: [makeChoice(), makeGridded({ key: 4, points: 2 })] }))).toMatchObject([
		{ code: 'key-mismatch', path: '/parts/1/key' },
	]);
	expect(checkItem(makeSet({ points: 2 }))).toMatchObject([{ code: 'set-points', path: '/points' }]);
	expect(checkItem(makeSet({ parts: [makeChoice(), makeGridded({ grid: 'nowhere', points: 2 })] }))).toMatchObject([
		{ path: '/parts/1/grid' },
	]);
});

test('parts are scored one by one', () => {
	const right = { kind: 'choice', options: ['b'] } as const;
	const wrong = { kind: 'entry', text: '-5' } as const;
	const scored = score(makeSet(), { kind: 'set', parts: [right, wrong] });
	expect(scored).toMatchObject({ state: 'partly', points: 1, maximum: 3 });
	expect(scored.parts?.map(({ state }) => state)).toEqual(['correct', 'incorrect']);
	expect(score(makeSet(), { kind: 'set', parts: [right, { kind: 'entry', text: '5' }] })).toMatchObject({
		state: 'correct',
		points: 3,
	});
	expect(() => score(makeSet(), { kind: 'set', parts: [right] })).toThrow(ResponseKindError);
	expect(() => score(makeSet(), right)).toThrow(ResponseKindError);
});

test('a search finds the words of every part, and not what only staff see', () => {
	const text = searchableText(makeSet({ parts: [makeChoice(), makeExplanation()], points: 3 }));
	expect(text).toContain('What is -9 + 2?');
	expect(text).not.toContain('Neither.');
});
