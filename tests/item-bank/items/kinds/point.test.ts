import { expect, test } from 'vitest';
import { computeKey } from '../../../../item-bank/items/key.ts';
import { placesOf } from '../../../../item-bank/items/kinds/point.ts';
import { score } from '../../../../item-bank/items/score.ts';
import { makePoint } from '../../../helpers/items.ts';
import { keyCodes } from '../../../helpers/key-codes.ts';

test('the key is the value of the expression, on a tick of the line', () => {
	expect(computeKey(makePoint())).toEqual({ kind: 'value', value: -7 });
	expect(keyCodes(makePoint({ expression: '-3 - 8' }))).toEqual(['point-off-line']);
	expect(keyCodes(makePoint({ line: { ...makePoint().line, tickEvery: 2 } }))).toEqual(['point-off-line']);
	expect(keyCodes(makePoint({ key: 7 }))).toEqual(['key-mismatch']);
});

test('a line on which the key is marked already gives it away', () => {
	expect(keyCodes(makePoint({ line: { ...makePoint().line, points: [{ at: -7 }] } }))).toEqual([
		'point-already-marked',
	]);
});

test('every tick can be marked, and only the key counts', () => {
	expect(placesOf(makePoint())).toHaveLength(21);
	for (const at of placesOf(makePoint())) {
		expect(score(makePoint(), { kind: 'point', at }).state).toBe(at === -7 ? 'correct' : 'incorrect');
	}
	expect(score(makePoint(), { kind: 'point' }).state).toBe('omitted');
	expect(score(makePoint(), { kind: 'point', at: 11 })).toMatchObject({
		state: 'invalid',
		reason: 'place-not-offered',
	});
});
