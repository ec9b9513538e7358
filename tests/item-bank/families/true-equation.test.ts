import { expect } from 'vitest';
import { trueEquation } from '../../../item-bank/families/symbols/true-equation.ts';
import { optionTextsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(trueEquation, {
	first: { name: 'True equation, key -10 + 6 = -4', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 20, largest: 4 }, 'sizes from 20 to 4'],
	holds: (item) => {
		const isTrue = (text: string): boolean => {
			const [left = '', right = ''] = text.split(' = ');
			return worthOf(left) === worthOf(right);
		};
		expect(optionTextsOf(item).filter(isTrue)).toHaveLength(1);
	},
});
