import { expect } from 'vitest';
import { sumOfTwo } from '../../../item-bank/families/symbols/sum-of-two.ts';
import { testFamily } from './family-laws.ts';

testFamily(sumOfTwo, {
	first: { name: 'Sum, unlike signs: -4 + 13', key: { kind: 'value', value: 9 } },
	impossible: [{ least: 900, largest: 3 }, 'sizes from 900 to 3'],
	holds: (_item, asked) => {
		expect(asked).toMatch(/^-?\d+ \+ (\d+|\(-\d+\))$/);
		expect(asked).toContain('-');
	},
});
