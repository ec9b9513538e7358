import { expect } from 'vitest';
import { countersExpression } from '../../../item-bank/families/counters/counters-expression.ts';
import { figureOf, optionTextsOf, testFamily } from './family-laws.ts';

testFamily(countersExpression, {
	first: { name: 'Expression for 2 minus counters with 3 plus taken away', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 11, largest: 3 }, 'sizes from 11 to 3'],
	holds: (item) => {
		expect(figureOf(item).kind).toBe('counters');
		expect(optionTextsOf(item).length).toBeGreaterThanOrEqual(3);
	},
});
