import { expect, test } from 'vitest';
import { tellingDescription } from '../../../../item-bank/checks/review/telling-description.ts';
import { makeGridded } from '../../../helpers/items.ts';

const showing = (labels: 'every-tick' | 'ends-and-zero', expression: string) =>
	makeGridded({
		given: 'number-line',
		expression,
		stem: [
			{ kind: 'paragraph', text: 'Where do the arrows end?' },
			{
				kind: 'figure',
				figure: {
					kind: 'number-line',
					orientation: 'horizontal',
					from: -10,
					to: 10,
					tickEvery: 1,
					labels,
					arrows: [-3, -4],
				},
			},
		],
	});

test('a description that speaks the number asked for is pointed at', () => {
	expect(tellingDescription.find(showing('every-tick', '-3 + (-4)'))).toMatchObject([{ path: '/stem/1/figure' }]);
});

test('a description that counts ticks instead is left alone', () => {
	expect(tellingDescription.find(showing('ends-and-zero', '-3 + (-4)'))).toEqual([]);
	expect(tellingDescription.find(makeGridded())).toEqual([]);
});
