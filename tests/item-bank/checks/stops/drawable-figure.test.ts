import { expect, test } from 'vitest';
import { drawableFigure } from '../../../../item-bank/checks/stops/drawable-figure.ts';
import { makeGridded } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const ringing = (ringedPairs: number) =>
	makeGridded({
		given: 'counters',
		stem: [
			{ kind: 'paragraph', text: 'What number do the counters show?' },
			{ kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 2, ringedPairs } },
		],
	});

test('a figure that cannot be drawn is refused, with its place', () => {
	expect(found(drawableFigure, ringing(3))).toMatchObject([
		{ code: 'figure-ringed-too-many', path: '/stem/1/figure/ringedPairs' },
	]);
});

test('as many rings as pairs can be drawn', () => {
	expect(found(drawableFigure, ringing(2))).toEqual([]);
});
