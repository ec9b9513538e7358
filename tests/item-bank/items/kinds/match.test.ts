import { expect, test } from 'vitest';
import { computeKey } from '../../../../item-bank/items/key.ts';
import { score } from '../../../../item-bank/items/score.ts';
import type { MatchResponse } from '../../../../item-bank/types.ts';
import { makeMatch } from '../../../helpers/items.ts';
import { keyCodes } from '../../../helpers/key-codes.ts';

const pairs = (...texts: readonly string[]): MatchResponse => ({
	kind: 'match',
	pairs: texts.map((text) => ({ left: text[0] ?? '', right: text[1] ?? '' })),
});

test('partners are worth the same', () => {
	expect(computeKey(makeMatch())).toEqual({ kind: 'pairs', pairs: pairs('ac', 'ba', 'cd').pairs });
});

test('partners are figures and the expressions they show', () => {
	const item = makeMatch({
		partners: 'shows',
		left: [
			{ id: 'a', content: { kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 8 } } },
			{ id: 'b', content: { kind: 'figure', figure: { kind: 'counters', plus: 8, minus: 3 } } },
		],
		right: ['8 + (-3)', '3 + (-8)', '3 + 8'].map((math, index) => ({
			id: 'abc'[index] ?? '',
			content: { kind: 'mathematics', math },
		})),
	});
	expect(computeKey(item)).toEqual({ kind: 'pairs', pairs: pairs('ab', 'ba').pairs });
	expect(keyCodes(makeMatch({ partners: 'shows' }))).toEqual(['option-not-computable']);
});

test('a left entry has exactly one partner, and a right one at most one', () => {
	const right = makeMatch().right.filter(({ id }) => id !== 'a');
	expect(keyCodes(makeMatch({ right }))).toEqual(['match-partner-count']);
	const twins = [...makeMatch().left, { id: 'd', content: { kind: 'mathematics' as const, math: '8 - 3' } }];
	expect(keyCodes(makeMatch({ left: twins }))).toEqual(['match-partner-shared']);
});

test('all pairs earn the points, and with credit in parts each pair earns its share', () => {
	expect(score(makeMatch(), pairs('ac', 'ba', 'cd'))).toMatchObject({ state: 'correct', points: 3 });
	expect(score(makeMatch(), pairs('ac', 'bb', 'cd'))).toMatchObject({ state: 'incorrect', points: 0 });
	expect(score(makeMatch({ credit: 'parts' }), pairs('ac', 'bb', 'cd'))).toMatchObject({ state: 'partly', points: 2 });
	expect(score(makeMatch({ credit: 'parts' }), pairs('ab'))).toMatchObject({ state: 'incorrect', points: 0 });
});

test('an entry used twice is invalid, no pair is an omission', () => {
	expect(score(makeMatch(), pairs('ac', 'ab'))).toMatchObject({ state: 'invalid', reason: 'double-mark' });
	expect(score(makeMatch(), pairs('ac', 'bc'))).toMatchObject({ state: 'invalid', reason: 'double-mark' });
	expect(score(makeMatch(), pairs('ah'))).toMatchObject({ state: 'invalid', reason: 'option-not-offered' });
	expect(score(makeMatch(), pairs())).toMatchObject({ state: 'omitted' });
});
