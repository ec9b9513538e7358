import { expect } from 'vitest';
import { expressionArrows } from '../../../item-bank/families/number-line/expression-arrows.ts';
import { optionTextsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(expressionArrows, {
	first: { name: 'Number line for -2 + (-4), horizontal', key: { kind: 'options', options: ['b'] } },
	impossible: [{ least: 10, largest: 3 }, 'sizes from 10 to 3'],
	holds: (item, asked) => {
		expect(worthOf(asked)).toBeTypeOf('number');
		for (const kind of optionTextsOf(item)) expect(kind).toBe('number-line');
	},
});
