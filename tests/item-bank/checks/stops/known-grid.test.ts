import { expect, test } from 'vitest';
import { knownGrid } from '../../../../item-bank/checks/stops/known-grid.ts';
import { makeGridded, makeSet } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('a grid nobody knows is refused, with the known ones', () => {
	const [problem] = found(knownGrid, makeGridded({ grid: 'no-such-grid' }));
	expect(problem).toMatchObject({ code: 'unknown-grid-profile', path: '/grid' });
	expect(problem?.message).toContain('plain-sign-first');
	const set = makeSet({ parts: [makeGridded(), makeGridded({ grid: 'no-such-grid' })] });
	expect(found(knownGrid, set)).toMatchObject([{ path: '/parts/1/grid' }]);
});

test('a known grid is left alone', () => {
	expect(found(knownGrid, makeGridded({ grid: 'floating-sign' }))).toEqual([]);
});
