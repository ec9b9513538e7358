import { expect } from 'vitest';
import { equalExpressions } from '../../../item-bank/families/symbols/equal-expressions.ts';
import { optionTextsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(equalExpressions, {
	first: { name: 'Expressions equal to -11 - 9', key: { kind: 'options', options: ['a', 'd'] } },
	impossible: [{ least: 90, largest: 4 }, 'sizes from 90 to 4'],
	holds: (item, asked) => {
		const equal = optionTextsOf(item).filter((text) => worthOf(text) === worthOf(asked));
		expect(optionTextsOf(item)).toHaveLength(4);
		expect(equal).toHaveLength(2);
	},
});
