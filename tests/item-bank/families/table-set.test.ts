import { expect } from 'vitest';
import { tableSet } from '../../../item-bank/families/tables/table-set.ts';
import { testFamily } from './family-laws.ts';

testFamily(tableSet, {
	first: {
		name: 'Table of levels, seedling goal: -16, -36, -8, -44',
		key: {
			kind: 'parts',
			parts: [
				{ kind: 'options', options: ['d'] },
				{ kind: 'value', value: 8 },
				{ kind: 'value', value: 36 },
			],
		},
	},
	holds: (item) => {
		if (item.kind !== 'set') throw new Error(item.name);
		expect(item.parts).toHaveLength(3);
		expect(item.parts.reduce((sum, { points }) => sum + points, 0)).toBe(item.points);
	},
});
