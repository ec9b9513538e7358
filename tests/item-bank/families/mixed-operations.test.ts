import { expect } from 'vitest';
import { mixedOperations } from '../../../item-bank/families/symbols/mixed-operations.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(mixedOperations, {
	first: { name: 'Two operations: 7 × (6 - (-3))', key: { kind: 'value', value: 63 } },
	impossible: [{ least: 12, largest: 4 }, 'sizes from 12 to 4'],
	holds: (item, asked) => {
		expect(asked).toMatch(/[×÷]/);
		expect(asked).toMatch(/ [+-] /);
		expect(worthOf(item)).toBe(worthOf(asked));
	},
});
