import { expect } from 'vitest';
import { countersValue } from '../../../item-bank/families/counters/counters-value.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(countersValue, {
	first: { name: 'Value of 4 plus and 12 minus counters', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 20, largest: 2 }, 'sizes from 20 to 2'],
	holds: (item) => {
		const figure = figureOf(item);
		if (figure.kind !== 'counters') throw new Error(item.name);
		expect(worthOf(item)).toBe(figure.plus - figure.minus);
	},
});
