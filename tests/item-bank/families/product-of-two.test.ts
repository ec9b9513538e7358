import { expect } from 'vitest';
import { productOfTwo } from '../../../item-bank/families/symbols/product-of-two.ts';
import { testFamily } from './family-laws.ts';

testFamily(productOfTwo, {
	first: { name: 'Product, like signs: -4 × (-9)', key: { kind: 'value', value: 36 } },
	impossible: [{ least: 20, largest: 2 }, 'sizes from 20 to 2'],
	holds: (_item, asked) => {
		expect(asked).toMatch(/^-?\d+ × (\d+|\(-\d+\))$/);
		expect(asked).toContain('-');
	},
});
