import { expect } from 'vitest';
import { zeroPairs } from '../../../item-bank/families/counters/zero-pairs.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(zeroPairs, {
	first: { name: 'Zero pairs added to find -2 - 4', key: { kind: 'value', value: -6 } },
	impossible: [{ least: 8, largest: 2 }, 'sizes from 8 to 2'],
	holds: (item) => {
		const figure = figureOf(item);
		if (figure.kind !== 'counters') throw new Error(item.name);
		expect(figure.addedPairs).toBeGreaterThan(0);
		const removed = figure.removed?.sign === 'plus' ? figure.removed.count : -(figure.removed?.count ?? 0);
		expect(worthOf(item)).toBe(figure.plus - figure.minus - removed);
	},
});
