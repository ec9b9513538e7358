import { describe, expect, test } from 'vitest';
import { ResponseKindError, score } from '../../../item-bank/items/score.ts';
import { getGridProfile } from '../../../item-bank/responses/grid-profiles.ts';
import { makeChoice, makeGridded, makeMultipleChoice } from '../../helpers/items.ts';

const marked = (...options: readonly string[]) => ({ kind: 'choice', options }) as const;

describe('choice', () => {
	test('earns all points for the key and none otherwise', () => {
		expect(score(makeChoice({ points: 2 }), marked('b'))).toEqual({ state: 'correct', points: 2, maximum: 2 });
		expect(score(makeChoice({ points: 2 }), marked('a'))).toEqual({ state: 'incorrect', points: 0, maximum: 2 });
	});
	test('keeps omitted, doubly marked and unoffered options apart from wrong ones', () => {
		expect(score(makeChoice(), marked())).toMatchObject({ state: 'omitted', points: 0 });
		expect(score(makeChoice(), marked('a', 'b'))).toMatchObject({ state: 'invalid', reason: 'double-mark' });
		expect(score(makeChoice(), marked('h'))).toMatchObject({ state: 'invalid', reason: 'option-not-offered' });
	});
});

test('multiple choice earns its points for exactly the keys', () => {
	expect(score(makeMultipleChoice(), marked('c', 'a')).state).toBe('correct');
	for (const options of [['a'], ['a', 'b', 'c'], ['b', 'd']])
		expect(score(makeMultipleChoice(), marked(...options)).state).toBe('incorrect');
});

describe('gridded', () => {
	test('reads a grid by the profile of the item, or of the form', () => {
		const shifted = { kind: 'grid', columns: [['-'], [], ['1'], ['1'], []] } as const;
		const item = makeGridded({ expression: '-3 - 8' });
		expect(score(item, shifted).state).toBe('correct');
		expect(score(item, shifted, getGridProfile('left-sign-first'))).toMatchObject({
			state: 'invalid',
			reason: 'not-at-left',
		});
	});
	test('reads an entry, and keeps what is no number apart', () => {
		expect(score(makeGridded({ expression: '-3 - 8' }), { kind: 'entry', text: '−11' }).state).toBe('correct');
		expect(score(makeGridded(), { kind: 'entry', text: '-5' }).state).toBe('incorrect');
		expect(score(makeGridded(), { kind: 'entry', text: 'five' })).toMatchObject({
			state: 'invalid',
			reason: 'not-a-number',
		});
		expect(score(makeGridded(), { kind: 'entry', text: '' }).state).toBe('omitted');
	});
});

test('a response of another kind is refused', () => {
	expect(() => score(makeGridded(), marked('a'))).toThrow(ResponseKindError);
	expect(() => score(makeChoice(), { kind: 'entry', text: '5' })).toThrow(ResponseKindError);
});

test('multiple choice with credit in parts earns a share for right marks less wrong ones, never below nothing', () => {
	const item = makeMultipleChoice({ credit: 'parts', points: 2 });
	expect(score(item, marked('a', 'c'))).toMatchObject({ state: 'correct', points: 2 });
	expect(score(item, marked('a'))).toMatchObject({ state: 'partly', points: 1 });
	expect(score(item, marked('a', 'b', 'c'))).toMatchObject({ state: 'partly', points: 1 });
	expect(score(item, marked('a', 'b'))).toMatchObject({ state: 'incorrect', points: 0 });
	expect(score(item, marked('b', 'd'))).toMatchObject({ state: 'incorrect', points: 0 });
});
