import fc from 'fast-check';
import type { CounterGroupsFigure, CounterSign, CountersFigure, NumberLineFigure } from '../../../item-bank/types.ts';

const sign = fc.constantFrom<CounterSign>('plus', 'minus');

/** Counters that pass checkFigure. */
export const counters: fc.Arbitrary<CountersFigure> = fc
	.record({
		plus: fc.nat(24),
		minus: fc.nat(24),
		addedPairs: fc.oneof(fc.constant(0), fc.nat(24)),
		sign,
		part: fc.nat(100),
	})
	.filter(({ plus, minus, addedPairs }) => plus + minus + addedPairs > 0)
	.chain(({ plus, minus, addedPairs, sign, part }) => {
		const there = (sign === 'plus' ? plus : minus) + addedPairs;
		const count = Math.floor((there * part) / 100);
		return fc.nat(Math.min(plus, minus)).map((ringedPairs) => ({
			kind: 'counters' as const,
			plus,
			minus,
			...(ringedPairs > 0 ? { ringedPairs } : {}),
			...(addedPairs > 0 ? { addedPairs } : {}),
			...(count > 0 ? { removed: { sign, count } } : {}),
		}));
	});

/** Groups of counters. */
export const groups: fc.Arbitrary<CounterGroupsFigure> = fc.record({
	kind: fc.constant('counter-groups' as const),
	groups: fc.integer({ min: 1, max: 10 }),
	each: fc.integer({ min: 1, max: 10 }),
	sign,
});

const length = fc.integer({ min: -30, max: 30 }).filter((value) => value !== 0);
const scaleOfNumbers = fc.constantFrom(1, 1, 1, 5, 10, 25);

/** Number lines as the schema allows them, not all of which pass checkFigure. */
export const lines: fc.Arbitrary<NumberLineFigure> = fc
	.record(
		{
			kind: fc.constant('number-line' as const),
			orientation: fc.constantFrom('horizontal' as const, 'vertical' as const),
			labels: fc.constantFrom('every-tick' as const, 'ends' as const, 'ends-and-zero' as const, 'zero' as const),
			arrows: fc.array(length, { minLength: 1, maxLength: 6 }),
			start: fc.integer({ min: -20, max: 20 }),
			arrowLabels: fc.boolean(),
			points: fc.uniqueArray(
				fc.record({ at: fc.integer({ min: -30, max: 30 }), label: fc.constantFrom('A', 'B', 'M', 'W', 'I') }),
				{ minLength: 1, maxLength: 4, selector: (point) => point.at },
			),
			times: scaleOfNumbers,
		},
		{ requiredKeys: ['kind', 'orientation'] },
	)
	.map(({ times = 1, ...line }) => {
		const { arrows, start, arrowLabels, ...rest } = line;
		return {
			...rest,
			...(rest.points === undefined
				? {}
				: { points: rest.points.map((point) => ({ ...point, at: point.at * times })) }),
			...(arrows === undefined ? {} : { arrows: arrows.map((value) => value * times) }),
			...(arrows === undefined || start === undefined ? {} : { start: start * times }),
			...(arrows === undefined || arrowLabels === undefined ? {} : { arrowLabels }),
		};
	});

/** Number lines with windows, steps and lists of labels as an author might type them; most do not pass checkFigure. */
export const typedLines: fc.Arbitrary<NumberLineFigure> = fc
	.tuple(
		lines,
		fc.record(
			{
				from: fc.integer({ min: -60, max: 20 }),
				to: fc.integer({ min: -20, max: 60 }),
				tickEvery: fc.constantFrom(1, 2, 3, 5, 10),
				labels: fc.uniqueArray(fc.integer({ min: -60, max: 60 }), { maxLength: 4 }),
			},
			{ requiredKeys: [] },
		),
	)
	.map(([line, typed]) => ({ ...line, ...typed }));
