import { expect } from 'vitest';
import { sumOfSeveral } from '../../../item-bank/families/symbols/sum-of-several.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(sumOfSeveral, {
	first: { name: 'Three terms: 6 - 3 - 10', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 90, largest: 3 }, 'sizes from 90 to 3'],
	holds: (item, asked) => {
		expect(asked.match(/\d+/g)).toHaveLength(3);
		expect(asked).not.toMatch(/[×÷|]/);
		expect(worthOf(item)).toBe(worthOf(asked));
	},
});
