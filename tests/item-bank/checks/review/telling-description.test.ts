import { expect, test } from 'vitest';
import { tellingDescription } from '../../../../item-bank/checks/review/telling-description.ts';
import { makeChoice, makeGridded, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const stem = (labels: 'every-tick' | 'ends-and-zero', figure: object) =>
	[
		{ kind: 'paragraph', text: 'Where do the arrows end?' },
		{
			kind: 'figure',
			figure: { kind: 'number-line', orientation: 'horizontal', from: -10, to: 10, tickEvery: 1, labels, ...figure },
		},
	] as const;
const walk = { arrows: [-3, -4] };

test('a description that speaks the number asked for is pointed at', () => {
	const item = makeGridded({ given: 'number-line', expression: '-3 + (-4)', stem: stem('every-tick', walk) });
	expect(found(tellingDescription, item)).toMatchObject([
		{ path: '/stem/1/figure', message: expect.stringContaining('ends at negative 7') },
	]);
	const point = makeChoice({
		given: 'number-line',
		stem: stem('every-tick', { points: [{ at: 7, label: 'P' }] }),
		options: numberOptions(-7, 7, 8),
		rule: { kind: 'shown' },
	});
	expect(found(tellingDescription, { ...point, stem: point.stem.slice(1) })).toMatchObject([
		{ path: '/stem/0/figure' },
	]);
});

test('a description that counts ticks, or that has the number on its scale only, is left alone', () => {
	const ticks = makeGridded({ given: 'number-line', expression: '-3 + (-4)', stem: stem('ends-and-zero', walk) });
	expect(found(tellingDescription, ticks)).toEqual([]);
	const scale = makeGridded({ given: 'number-line', expression: '-10', stem: stem('every-tick', walk) });
	expect(found(tellingDescription, scale)).toEqual([]);
	expect(found(tellingDescription, makeGridded())).toEqual([]);
});
