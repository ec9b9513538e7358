import { expect } from 'vitest';
import { pointReading } from '../../../item-bank/families/number-line/point-reading.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(pointReading, {
	first: { name: 'Point at the opposite of 200, horizontal, ticks every 50', key: { kind: 'options', options: ['a'] } },
	holds: (item, asked) => {
		const figure = figureOf(item);
		if (figure.kind !== 'number-line') throw new Error(item.name);
		expect(figure.points).toHaveLength(3);
		expect(figure.points?.filter(({ at }) => at === worthOf(asked))).toHaveLength(1);
	},
});
