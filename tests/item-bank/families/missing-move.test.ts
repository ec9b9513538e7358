import { expect } from 'vitest';
import { missingMove } from '../../../item-bank/families/number-line/missing-move.ts';
import { figureOf, testFamily, worthOf } from './family-laws.ts';

testFamily(missingMove, {
	first: { name: 'Second of two moves from 2 to -8, horizontal', key: { kind: 'value', value: 2 } },
	holds: (item) => {
		const figure = figureOf(item);
		if (figure.kind !== 'number-line') throw new Error(item.name);
		const at = (label: string): number => figure.points?.find((point) => point.label === label)?.at ?? Number.NaN;
		const text = JSON.stringify(item.stem);
		const [, size = '', way = ''] = /first move is (\d+) units (?:to the )?(\w+)/.exec(text) ?? [];
		const move = /down|left/.test(way) ? -Number(size) : Number(size);
		expect(at('S') + move + worthOf(item)).toBe(at('F'));
	},
});
