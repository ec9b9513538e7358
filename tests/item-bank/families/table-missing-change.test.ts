import { expect } from 'vitest';
import { tableMissingChange } from '../../../item-bank/families/tables/table-missing-change.ts';
import { rowsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(tableMissingChange, {
	first: { name: 'Change back to zero, seedling goal: 0 - (29 + (-20) + (-19))', key: { kind: 'value', value: 10 } },
	holds: (item) => {
		const changes = rowsOf(item).map(([, change]) => Number(change));
		expect(changes.reduce((sum, change) => sum + change, 0) + worthOf(item)).toBe(0);
	},
});
