import { expect, test } from 'vitest';
import { checkParameters, makeItem } from '../../../item-bank/families/make-items.ts';
import { trueComparison } from '../../../item-bank/families/symbols/true-comparison.ts';
import { optionTextsOf, testFamily } from './family-laws.ts';

testFamily(trueComparison, {
	first: { name: 'True order statement, key -15 < -5', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 90, largest: 9 }, 'sizes from 90 to 9'],
	holds: (item) => {
		const isTrue = (text: string): boolean => {
			const [, left = '', sign = '', right = ''] = /^(-?\d+) ([<>]) (-?\d+)$/.exec(text) ?? [];
			return sign === '<' ? Number(left) < Number(right) : Number(left) > Number(right);
		};
		expect(optionTextsOf(item).filter(isTrue)).toHaveLength(1);
		expect(optionTextsOf(item)).toHaveLength(4);
	},
});

test('answers at once where more combinations exist than can be counted', () => {
	const parameters = { least: 9, largest: 97 };
	const begun = performance.now();
	expect(checkParameters(trueComparison, parameters)).toEqual([]);
	expect(performance.now() - begun).toBeLessThan(1000);
	expect(makeItem(trueComparison, 'wide/1', parameters)).toBeDefined();
});
