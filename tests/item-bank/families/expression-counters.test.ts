import { expect } from 'vitest';
import { expressionCounters } from '../../../item-bank/families/counters/expression-counters.ts';
import { optionTextsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(expressionCounters, {
	first: { name: 'Counters for 2 × (-5)', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 9, largest: 3 }, 'sizes from 9 to 3'],
	holds: (item, asked) => {
		expect(worthOf(asked)).toBeTypeOf('number');
		for (const kind of optionTextsOf(item)) expect(kind).toMatch(/^counter/);
	},
});
