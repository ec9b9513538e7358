import { expect } from 'vitest';
import { missingNumber } from '../../../item-bank/families/symbols/missing-number.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(missingNumber, {
	first: { name: 'Missing number: -14 + ? = -22', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 90, largest: 4 }, 'sizes from 90 to 4'],
	holds: (item, asked) => {
		const [left = '', right = ''] = asked.split(' = ');
		const found = worthOf(item);
		expect(worthOf(left.replace('?', `(${found})`))).toBe(worthOf(right));
	},
});
