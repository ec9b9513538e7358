import { expect } from 'vitest';
import { lineMatch } from '../../../item-bank/families/number-line/line-match.ts';
import { testFamily } from './family-laws.ts';

testFamily(lineMatch, {
	first: {
		name: 'Match sums and arrows: 5 and 2, horizontal',
		key: {
			kind: 'pairs',
			pairs: [
				{ left: 'a', right: 'a' },
				{ left: 'b', right: 'c' },
			],
		},
	},
	impossible: [{ least: 8, largest: 3 }, 'sizes from 8 to 3'],
	holds: (item) => {
		if (item.kind !== 'match') throw new Error(item.name);
		expect(item.right).toHaveLength(item.left.length + 1);
	},
});
