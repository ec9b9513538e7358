import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import type { CountersFigure, Figure, NumberLineFigure } from '../../../item-bank/types.ts';
import { counters, groups, lines } from './figure-arbitraries.ts';

const set = (parts: Partial<CountersFigure>): Figure => ({ kind: 'counters', plus: 0, minus: 0, ...parts });
const line = (parts: Partial<NumberLineFigure>): Figure => ({
	kind: 'number-line',
	orientation: 'horizontal',
	...parts,
});

const broken: readonly (readonly [string, string, string, Figure])[] = [
	['no counters at all', 'figure-without-counters', '', set({})],
	['more rings than pairs', 'figure-ringed-too-many', '/ringedPairs', set({ plus: 5, minus: 2, ringedPairs: 3 })],
	[
		'more taken away than there are',
		'figure-removed-too-many',
		'/removed/count',
		set({ plus: 5, minus: 2, addedPairs: 1, removed: { sign: 'minus', count: 4 } }),
	],
	['ends the wrong way round', 'figure-window-reversed', '/to', line({ from: 5, to: -5 })],
	['ends that are one number', 'figure-window-reversed', '/to', line({ from: 5, to: 5 })],
	['steps that miss the end', 'figure-ticks-uneven', '/to', line({ from: -10, to: 11, tickEvery: 5 })],
	['steps that miss zero', 'figure-zero-off-ticks', '/to', line({ from: -3, to: 7, tickEvery: 5 })],
	[
		'more ticks than can be counted',
		'figure-ticks-too-many',
		'/tickEvery',
		line({ from: -100, to: 100, tickEvery: 1 }),
	],
	[
		'a label between ticks',
		'figure-label-off-ticks',
		'/labels/1',
		line({ from: 0, to: 20, tickEvery: 5, labels: [0, 7] }),
	],
	[
		'a label for a zero that is not there',
		'figure-label-off-ticks',
		'/labels',
		line({ from: 5, to: 15, labels: 'zero' }),
	],
	[
		'listed labels that touch',
		'figure-labels-overlap',
		'/labels',
		line({ from: -20, to: 20, tickEvery: 1, labels: [-20, -19, 0] }),
	],
	['a start past the end', 'figure-outside-window', '/start', line({ from: -10, to: 10, start: 12, arrows: [-5] })],
	[
		'an arrow that ends past the end',
		'figure-outside-window',
		'/arrows/1',
		line({ from: -10, to: 10, arrows: [5, 6] }),
	],
	['a point past the end', 'figure-outside-window', '/points/0/at', line({ from: -10, to: 10, points: [{ at: 11 }] })],
	[
		'an unlabelled arrow that ends between ticks',
		'figure-arrow-off-ticks',
		'/arrows/0',
		line({ tickEvery: 5, arrows: [12] }),
	],
	[
		'a start between ticks, labels or not',
		'figure-arrow-off-ticks',
		'/start',
		line({ tickEvery: 5, start: 2, arrows: [13], arrowLabels: true }),
	],
	['an arrow without length', 'figure-arrow-zero', '/arrows/1', line({ arrows: [3, 0] })],
	[
		'an arrow too short to see',
		'figure-arrow-too-short',
		'/arrows/0',
		line({ tickEvery: 100, from: -500, to: 500, arrows: [3], arrowLabels: true }),
	],
	['a start without arrows', 'figure-arrows-missing', '/start', line({ start: 3 })],
	['labels for arrows without arrows', 'figure-arrows-missing', '/arrowLabels', line({ arrowLabels: true })],
	['a point between ticks', 'figure-point-off-ticks', '/points/0/at', line({ tickEvery: 5, points: [{ at: 12 }] })],
	['two points at one number', 'figure-points-coincide', '/points/1/at', line({ points: [{ at: 2 }, { at: 2 }] })],
	[
		'one letter for two points',
		'figure-point-label-repeated',
		'/points/1/label',
		line({
			points: [
				{ at: 2, label: 'A' },
				{ at: 4, label: 'A' },
			],
		}),
	],
	[
		'letters of points that touch',
		'figure-labels-overlap',
		'/points/1/label',
		line({
			from: -20,
			to: 20,
			tickEvery: 1,
			points: [
				{ at: 2, label: 'M' },
				{ at: 3, label: 'W' },
			],
		}),
	],
];

test.each(broken)('finds %s', (_name, code, path, figure) => {
	const problems = checkFigure(figure);
	expect(problems.map((problem) => [problem.code, problem.path])).toEqual([[code, path]]);
	expect(problems[0]?.message).toMatch(/^expected .*, found /);
});

test('accepts arrows that end between ticks when their lengths are written', () => {
	expect(checkFigure(line({ tickEvery: 5, from: -20, to: 20, arrows: [13, -24], arrowLabels: true }))).toEqual([]);
});

test('finds all problems of a figure in one go', () => {
	const figure = set({ plus: 1, minus: 1, ringedPairs: 2, removed: { sign: 'plus', count: 2 } });
	expect(checkFigure(figure).map(({ code }) => code)).toEqual(['figure-ringed-too-many', 'figure-removed-too-many']);
});

test('accepts every set and group of counters that the arbitraries build to be sound', () => {
	fc.assert(
		fc.property(fc.oneof<fc.Arbitrary<Figure>[]>(counters, groups), (figure) => {
			expect(checkFigure(figure)).toEqual([]);
		}),
	);
});

test('a line that passes can be drawn without numbers that are not finite', () => {
	fc.assert(
		fc.property(lines, (figure) => {
			fc.pre(checkFigure(figure).length === 0);
			expect(JSON.stringify(drawFigure(figure).root)).not.toMatch(/NaN|Infinity|undefined/);
		}),
	);
});
