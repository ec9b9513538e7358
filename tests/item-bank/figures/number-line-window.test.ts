import fc from 'fast-check';
import { expect, test } from 'vitest';
import { layScale } from '../../../item-bank/figures/number-line-scale.ts';
import { arrowStops, chooseWindow } from '../../../item-bank/figures/number-line-window.ts';
import type { NumberLineFigure } from '../../../item-bank/types.ts';
import { lines } from './figure-arbitraries.ts';

const line = (parts: Partial<NumberLineFigure>): NumberLineFigure => ({
	kind: 'number-line',
	orientation: 'horizontal',
	...parts,
});

test.each([
	['nothing marked', {}, { from: -5, to: 5, tickEvery: 1 }],
	['a short walk', { arrows: [5, -8] }, { from: -4, to: 6, tickEvery: 1 }],
	['tens', { arrows: [40, -100] }, { from: -70, to: 50, tickEvery: 10 }],
	['fives', { arrows: [20, -35] }, { from: -25, to: 25, tickEvery: 5 }],
	[
		'points far from zero that ones can show',
		{ points: [{ at: 483 }, { at: 495 }] },
		{ from: 482, to: 496, tickEvery: 1 },
	],
	['the whole range', { points: [{ at: -1000 }, { at: 1000 }] }, { from: -1000, to: 1000, tickEvery: 200 }],
	['a given step', { tickEvery: 2, points: [{ at: 6 }] }, { from: -10, to: 10, tickEvery: 2 }],
	['one given end', { from: 0, arrows: [7] }, { from: 0, to: 10, tickEvery: 1 }],
	['both ends given', { from: -50, to: 50, arrows: [30] }, { from: -50, to: 50, tickEvery: 10 }],
] as const)('%s', (_name, parts, expected) => {
	expect(chooseWindow(line(parts))).toEqual(expected);
});

test('what is chosen has at most 25 ticks, shows zero on a tick, and reaches past every mark', () => {
	fc.assert(
		fc.property(lines, (figure) => {
			const { from, to, tickEvery } = chooseWindow(figure);
			expect((to - from) / tickEvery).toBeLessThanOrEqual(24);
			expect((to - from) % tickEvery).toBe(0);
			if (from <= 0 && to >= 0) expect(from % tickEvery === 0).toBe(true);
			const marks = [...arrowStops(figure), ...(figure.points ?? []).map(({ at }) => at)];
			for (const mark of marks) {
				expect(mark - from >= tickEvery || from - tickEvery < -1000).toBe(true);
				expect(to - mark >= tickEvery || to + tickEvery > 1000).toBe(true);
			}
		}),
	);
});

test('labels too dense for every tick are thinned to round steps counted from zero', () => {
	const labelled = (from: number, to: number) => layScale(line({ from, to, tickEvery: 1 })).labelled;
	expect(labelled(-10, 10)).toHaveLength(21);
	expect(labelled(-12, 12)).toEqual([-12, -10, -8, -6, -4, -2, 0, 2, 4, 6, 8, 10, 12]);
	expect(labelled(-20, 20)).toEqual([-20, -15, -10, -5, 0, 5, 10, 15, 20]);
});

test('the zero of "ends-and-zero" gives way to an end it would touch', () => {
	const labels = 'ends-and-zero';
	expect(layScale(line({ from: -1, to: 39, tickEvery: 1, labels })).labelled).toEqual([-1, 39]);
	expect(layScale(line({ from: -10, to: 10, labels })).labelled).toEqual([-10, 0, 10]);
});
