import { expect, test } from 'vitest';
import { setPoints } from '../../../../item-bank/checks/stops/set-points.ts';
import { makeGridded, makeSet } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('a set worth something else than its parts is refused', () => {
	expect(found(setPoints, makeSet({ points: 4 }))).toMatchObject([{ code: 'set-points', path: '/points' }]);
});

test('a set worth its parts, and other items, are left alone', () => {
	expect(found(setPoints, makeSet({ points: 3 }))).toEqual([]);
	expect(found(setPoints, makeGridded({ points: 4 }))).toEqual([]);
});
