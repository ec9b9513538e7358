import { expect } from 'vitest';
import { pointMarking } from '../../../item-bank/families/number-line/point-marking.ts';
import { testFamily, worthOf } from './family-laws.ts';

testFamily(pointMarking, {
	first: { name: 'Mark -50 + (-20), horizontal', key: { kind: 'value', value: -70 } },
	holds: (item) => {
		if (item.kind !== 'point') throw new Error(item.name);
		const { from = 0, to = 0, tickEvery = 1 } = item.line;
		expect(worthOf(item)).toBeGreaterThanOrEqual(from);
		expect(worthOf(item)).toBeLessThanOrEqual(to);
		expect(Math.abs(worthOf(item) % tickEvery)).toBe(0);
	},
});
