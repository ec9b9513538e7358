import { expect } from 'vitest';
import { distanceOnLine } from '../../../item-bank/families/number-line/distance-on-line.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(distanceOnLine, {
	first: { name: 'Distance between -5 and 10, horizontal', key: { kind: 'options', options: ['d'] } },
	holds: (item) => {
		const figure = figureOf(item);
		if (figure.kind !== 'number-line') throw new Error(item.name);
		const [one, other] = (figure.points ?? []).map(({ at }) => at);
		expect(worthOf(item)).toBe(Math.abs((one ?? 0) - (other ?? 0)));
		expect(Math.min(one ?? 0, other ?? 0)).toBeLessThan(0);
	},
});
