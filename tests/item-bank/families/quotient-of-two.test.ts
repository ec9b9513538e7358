import { expect } from 'vitest';
import { quotientOfTwo } from '../../../item-bank/families/symbols/quotient-of-two.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(quotientOfTwo, {
	first: { name: 'Quotient, unlike signs: -90 ÷ 9', key: { kind: 'value', value: -10 } },
	impossible: [{ least: 20, largest: 2 }, 'sizes from 20 to 2'],
	holds: (item, asked) => {
		expect(asked).toMatch(/^-?\d+ ÷ (\d+|\(-\d+\))$/);
		expect(asked).toContain('-');
		expect(Math.abs(worthOf(item))).toBeGreaterThan(1);
	},
});
