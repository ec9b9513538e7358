import { expect } from 'vitest';
import { tableChange } from '../../../item-bank/families/tables/table-change.ts';
import { rowsOf, testFamily, worthOf } from './family-laws.ts';

testFamily(tableChange, {
	first: { name: 'Change in a table, tide level: 24 - (-77)', key: { kind: 'value', value: 101 } },
	holds: (item, asked) => {
		const levels = rowsOf(item).map(([, level]) => Number(level));
		expect(levels).toHaveLength(4);
		const [, to = '', from = ''] = /^(-?\d+) - \(?(-?\d+)\)?$/.exec(asked) ?? [];
		expect(levels).toContain(Number(to));
		expect(levels).toContain(Number(from));
		expect(worthOf(item)).toBe(Number(to) - Number(from));
	},
});
