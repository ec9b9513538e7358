import { expect } from 'vitest';
import { counterGroups } from '../../../item-bank/families/counters/counter-groups.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(counterGroups, {
	first: { name: 'Product for 3 groups of 2 minus counters', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 9, largest: 2 }, 'sizes from 9 to 2'],
	holds: (item) => {
		const figure = figureOf(item);
		if (figure.kind !== 'counter-groups') throw new Error(item.name);
		expect(figure.sign).toBe('minus');
		if (item.kind === 'gridded') expect(worthOf(item)).toBe(-figure.groups * figure.each);
	},
});
