import { expect } from 'vitest';
import { countersMatch } from '../../../item-bank/families/counters/counters-match.ts';
import { testFamily } from './family-laws.ts';

testFamily(countersMatch, {
	first: {
		name: 'Match sums and counters: 4, 7 and 6',
		key: {
			kind: 'pairs',
			pairs: [
				{ left: 'a', right: 'a' },
				{ left: 'b', right: 'd' },
				{ left: 'c', right: 'c' },
			],
		},
	},
	impossible: [{ least: 8, largest: 3 }, 'sizes from 8 to 3'],
	holds: (item) => {
		if (item.kind !== 'match') throw new Error(item.name);
		expect(item.right).toHaveLength(item.left.length + 1);
		expect(item.points).toBe(2);
	},
});
