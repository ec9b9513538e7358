import { expect } from 'vitest';
import { arrowsExpression } from '../../../item-bank/families/number-line/arrows-expression.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(arrowsExpression, {
	first: { name: 'Expression for arrows 4, -5, -8, horizontal', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 10, largest: 3 }, 'sizes from 10 to 3'],
	holds: (item) => {
		const figure = figureOf(item);
		if (figure.kind !== 'number-line') throw new Error(item.name);
		const end = (figure.arrows ?? []).reduce((sum, arrow) => sum + arrow, 0);
		expect(worthOf(item)).toBe(end);
	},
});
