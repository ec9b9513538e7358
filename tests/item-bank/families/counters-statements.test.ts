import { expect } from 'vitest';
import { countersStatements } from '../../../item-bank/families/counters/counters-statements.ts';
import { figureOf, optionTextsOf, testFamily } from './family-laws.ts';

testFamily(countersStatements, {
	first: { name: 'True statements about 7 plus and 9 minus counters', key: { kind: 'options', options: ['a', 'd'] } },
	impossible: [{ least: 10, largest: 4 }, 'sizes from 10 to 4'],
	holds: (item) => {
		const figure = figureOf(item);
		if (figure.kind !== 'counters') throw new Error(item.name);
		expect(figure.ringedPairs).toBeGreaterThan(0);
		expect(optionTextsOf(item)).toHaveLength(4);
	},
});
