import { expect } from 'vitest';
import { tableTotal } from '../../../item-bank/families/tables/table-total.ts';
import { rowsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(tableTotal, {
	first: { name: 'Table of changes, robot track: -25 + 62 + (-14) + (-29)', key: { kind: 'value', value: -6 } },
	holds: (item, asked) => {
		const changes = rowsOf(item).map(([, change]) => Number(change));
		const start = Number(/^-?\d+/.exec(asked)?.[0]);
		expect(worthOf(item)).toBe(changes.reduce((sum, change) => sum + change, start));
	},
});
