import { expect } from 'vitest';
import { explainCounters } from '../../../item-bank/families/reasoning/explain-counters.ts';
import { figureOf, testFamily } from './family-laws.ts';

testFamily(explainCounters, {
	first: { name: 'Explain 6 - (-4) with counters', key: { kind: 'rubric' } },
	impossible: [{ least: 8, largest: 3 }, 'sizes from 8 to 3'],
	holds: (item) => {
		const figure = figureOf(item);
		if (item.kind !== 'explanation' || figure.kind !== 'counters') throw new Error(item.name);
		expect(Math.min(figure.plus, figure.minus)).toBe(0);
		expect(item.rubric.map(({ points }) => points)).toEqual([3, 2, 1, 0]);
	},
});
