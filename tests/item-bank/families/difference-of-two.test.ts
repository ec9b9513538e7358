import { expect } from 'vitest';
import { differenceOfTwo } from '../../../item-bank/families/symbols/difference-of-two.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(differenceOfTwo, {
	first: { name: 'Difference below zero: 8 - 15', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 900, largest: 3 }, 'sizes from 900 to 3'],
	holds: (item, asked) => {
		expect(asked).toMatch(/^-?\d+ - \d+$/);
		expect(worthOf(item)).toBeLessThan(0);
	},
});
