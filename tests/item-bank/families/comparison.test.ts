import { expect } from 'vitest';
import { comparison } from '../../../item-bank/families/symbols/comparison.ts';
import { testFamily } from './family-laws.ts';

testFamily(comparison, {
	first: { name: 'Compare: -3 ? -20', key: { kind: 'options', options: ['c'] } },
	impossible: [{ least: 900, largest: 3 }, 'sizes from 900 to 3'],
	holds: (item) => {
		if (item.kind !== 'inline-choice') throw new Error(item.name);
		expect(item.statement).toMatch(/^.+ _ .+$/);
		expect(item.choices.map(({ math }) => math)).toEqual(['<', '=', '>']);
	},
});
