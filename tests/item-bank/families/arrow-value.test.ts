import { expect } from 'vitest';
import { arrowValue } from '../../../item-bank/families/number-line/arrow-value.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(arrowValue, {
	first: { name: 'Arrow for 10 + (-4), horizontal', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 10, largest: 4 }, 'sizes from 10 to 4'],
	holds: (item, asked) => {
		const figure = figureOf(item);
		if (figure.kind !== 'number-line') throw new Error(item.name);
		expect(worthOf(item)).toBe((figure.start ?? 0) + (figure.arrows?.[0] ?? 0));
		expect(worthOf(asked)).toBe(worthOf(item));
	},
});
