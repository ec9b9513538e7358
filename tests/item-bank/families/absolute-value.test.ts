import { expect } from 'vitest';
import { absoluteValue } from '../../../item-bank/families/symbols/absolute-value.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(absoluteValue, {
	first: { name: 'Absolute value: |-5 - 13|', key: { kind: 'options', options: ['d'] } },
	impossible: [{ least: 90, largest: 4 }, 'sizes from 90 to 4'],
	holds: (item, asked) => {
		expect(asked).toMatch(/^\|.+\|$/);
		expect(worthOf(item)).toBe(worthOf(asked));
	},
});
