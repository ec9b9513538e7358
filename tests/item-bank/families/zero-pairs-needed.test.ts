import { expect } from 'vitest';
import { zeroPairsNeeded } from '../../../item-bank/families/counters/zero-pairs-needed.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(zeroPairsNeeded, {
	first: { name: 'Zero pairs needed: 4 plus, 8 minus, 7 plus taken away', key: { kind: 'value', value: 3 } },
	impossible: [{ least: 8, largest: 5 }, 'sizes from 8 to 5'],
	holds: (item) => {
		const figure = figureOf(item);
		if (figure.kind !== 'counters') throw new Error(item.name);
		const [, taken = '', sign] = /, (\d+) (plus|minus) taken away$/.exec(item.name) ?? [];
		const there = sign === 'plus' ? figure.plus : figure.minus;
		expect(worthOf(item)).toBe(Number(taken) - there);
		expect(worthOf(item)).toBeGreaterThan(0);
	},
});
