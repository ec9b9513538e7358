import { expect } from 'vitest';
import { numberOrder } from '../../../item-bank/families/symbols/number-order.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(numberOrder, {
	first: {
		name: 'Order from least to greatest: -5, 3, 9, -17, 15',
		key: { kind: 'order', order: ['d', 'a', 'b', 'c', 'e'] },
	},
	impossible: [{ least: 90, largest: 9 }, 'sizes from 90 to 9'],
	holds: (item) => {
		const key = computeKey(item);
		if (item.kind !== 'order' || key.kind !== 'order') throw new Error(item.name);
		const values = key.order.map((id) => {
			const content = item.entries.find((entry) => entry.id === id)?.content;
			return content?.kind === 'mathematics' ? worthOf(content.math) : Number.NaN;
		});
		const rising = item.direction === 'ascending' ? values : [...values].reverse();
		expect(rising).toEqual([...new Set(values)].sort((a, b) => a - b));
	},
});
