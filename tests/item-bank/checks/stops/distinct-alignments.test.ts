import { expect, test } from 'vitest';
import { distinctAlignments } from '../../../../item-bank/checks/stops/distinct-alignments.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { align } from '../alignment.ts';
import { found } from '../found.ts';

test('a standard named twice is refused', () => {
	const alignments = [align({ primary: true }), align()];
	expect(found(distinctAlignments, makeGridded({ alignments }))).toMatchObject([
		{ code: 'alignment-repeated', path: '/alignments/1' },
	]);
});

test('two standards of one framework are left alone', () => {
	const alignments = [align({ primary: true }), align({ code: '6.3(C)' })];
	expect(found(distinctAlignments, makeGridded({ alignments }))).toEqual([]);
});
