import { expect, test } from 'vitest';
import { gridWidth } from '../../../../item-bank/checks/stops/grid-width.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('a key with more digits than the grid has columns is refused', () => {
	expect(found(gridWidth, makeGridded({ expression: '-100 * 100' }))).toMatchObject([
		{ code: 'grid-too-narrow', path: '/grid' },
	]);
});

test('a key as wide as the grid, and a grid nobody knows, are left alone', () => {
	expect(found(gridWidth, makeGridded({ expression: '-33 * 303' }))).toEqual([]);
	expect(found(gridWidth, makeGridded({ expression: '-100 * 100', grid: 'no-such-grid' }))).toEqual([]);
});
