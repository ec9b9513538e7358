import { expect } from 'vitest';
import { tableOrder } from '../../../item-bank/families/tables/table-order.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { rowsOf, testFamily } from './family-laws.ts';

testFamily(tableOrder, {
	first: {
		name: 'Order in a table, tide level: -73, -14, 50, -8',
		key: { kind: 'order', order: ['a', 'b', 'd', 'c'] },
	},
	holds: (item) => {
		const levels = rowsOf(item).map(([, level]) => Number(level));
		const key = computeKey(item);
		if (item.kind !== 'order' || key.kind !== 'order') throw new Error(item.name);
		const ordered = key.order.map((id) => levels['abcd'.indexOf(id)] ?? Number.NaN);
		expect(ordered).toEqual([...levels].sort((a, b) => a - b));
	},
});
