import { expect } from 'vitest';
import { minusNegative } from '../../../item-bank/families/symbols/minus-negative.ts';
import { testFamily } from './family-laws.ts';

testFamily(minusNegative, {
	first: { name: 'Negative minus negative: -7 - (-3)', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 900, largest: 3 }, 'sizes from 900 to 3'],
	holds: (_item, asked) => {
		expect(asked).toMatch(/^-?\d+ - \(-\d+\)$/);
	},
});
