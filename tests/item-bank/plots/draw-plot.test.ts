import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ink, paper } from '../../../item-bank/figures/marks.ts';
import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import { describePlot } from '../../../item-bank/plots/describe-plot.ts';
import { drawPlot } from '../../../item-bank/plots/draw-plot.ts';
import { hatch, rule, spread } from '../../../item-bank/plots/marks.ts';
import { sansWidth } from '../../../item-bank/plots/text-width.ts';
import type { Plot } from '../../../item-bank/types.ts';
import { plotOf } from './plot-arbitraries.ts';

interface Extent {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

/** The room a mark takes on the sheet, px. */
function extentOf({ name, attributes, children }: MarkupElement): Extent {
	const read = (key: string): number => Number(attributes[key] ?? 0);
	switch (name) {
		case 'rect':
			return { left: read('x'), right: read('x') + read('width'), top: read('y'), bottom: read('y') + read('height') };
		case 'line': {
			const [x, y] = [
				[read('x1'), read('x2')],
				[read('y1'), read('y2')],
			];
			return { left: Math.min(...x), right: Math.max(...x), top: Math.min(...y), bottom: Math.max(...y) };
		}
		case 'circle': {
			const [x, y, radius] = [read('cx'), read('cy'), read('r')];
			return { left: x - radius, right: x + radius, top: y - radius, bottom: y + radius };
		}
		case 'polygon': {
			const pairs = (attributes.points ?? '').split(' ').map((pair) => pair.split(',').map(Number));
			const [x, y] = [pairs.map(([first = 0]) => first), pairs.map(([, second = 0]) => second)];
			return { left: Math.min(...x), right: Math.max(...x), top: Math.min(...y), bottom: Math.max(...y) };
		}
		case 'text': {
			const [size, width] = [read('font-size'), sansWidth(String(children[0]), read('font-size'))];
			const anchor = attributes['text-anchor'];
			const left = read('x') - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0);
			return { left, right: left + width, top: read('y') - 0.7 * size, bottom: read('y') };
		}
		default:
			throw new Error(`expected a mark, found ${name}`);
	}
}

const marksOf = (plot: Plot) => drawPlot(plot).root.children.slice(1) as readonly MarkupElement[];

describe.each(Object.keys(plotOf) as readonly Plot['kind'][])('a plot of the kind %s', (kind) => {
	const arbitrary = plotOf[kind];

	test('stays on its sheet, every mark of it', () => {
		fc.assert(
			fc.property(arbitrary, (plot) => {
				const { width, height } = drawPlot(plot);
				for (const mark of marksOf(plot)) {
					const { left, right, top, bottom } = extentOf(mark);
					const isInside = left >= -0.5 && right <= width + 0.5 && top >= -0.5 && bottom <= height + 0.5;
					expect(isInside, `${JSON.stringify(mark)} on ${width} × ${height}`).toBe(true);
				}
			}),
			{ numRuns: 60 },
		);
	});

	test('is told apart without colour: ink, paper and one grey for rules', () => {
		fc.assert(
			fc.property(arbitrary, (plot) => {
				const tones = marksOf(plot).flatMap(({ attributes }) => [attributes.fill, attributes.stroke]);
				const known = new Set([undefined, 'none', ink, paper, rule]);
				expect(tones.filter((tone) => !known.has(tone))).toEqual([]);
			}),
			{ numRuns: 30 },
		);
	});

	test('is told in words that hold every label it shows', () => {
		fc.assert(
			fc.property(arbitrary, (plot) => {
				const text = describePlot(plot);
				expect(text).toMatch(/^[A-Z].*\.$/);
				expect(text).not.toMatch(/undefined|NaN|Infinity/);
				for (const label of labelsOf(plot)) expect(text).toContain(label);
			}),
			{ numRuns: 30 },
		);
	});
});

function labelsOf(plot: Plot): readonly string[] {
	switch (plot.kind) {
		case 'scores':
			return [`mean ${Number(plot.mean.toFixed(1))}`];
		case 'item-person':
		case 'item-scatter':
			return plot.items.map(({ label }) => label);
		case 'option-curves':
			return plot.panels.map(({ label }) => `Place ${label},`);
		case 'pattern-bars':
			return plot.bars.map(({ label }) => label);
		case 'evidence-board':
		case 'count-board':
			return plot.rows.map(({ label }) => `${label}:`);
	}
}

/** Texts of a plot that run into each other. */
function touching(plot: Plot): readonly string[] {
	const texts = marksOf(plot)
		.filter(({ name }) => name === 'text')
		.map((mark) => ({ text: String(mark.children[0]), ...extentOf(mark) }));
	return texts.flatMap((one, index) =>
		texts
			.slice(index + 1)
			.filter((two) => one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom)
			.map((two) => `${one.text} | ${two.text}`),
	);
}

test.each(['option-curves', 'pattern-bars', 'evidence-board', 'count-board'] as const)(
	'no two texts of %s touch',
	(kind) => {
		fc.assert(
			fc.property(plotOf[kind], (plot) => {
				expect(touching(plot)).toEqual([]);
			}),
			{ numRuns: 60 },
		);
	},
);

test('hatching stays within its rectangle and is denser with a smaller step', () => {
	const strokes = hatch(10, 20, 30, 12, 4).map(extentOf);
	for (const { left, right, top, bottom } of strokes) {
		expect(left >= 10 && right <= 40 && top >= 20 && bottom <= 32).toBe(true);
	}
	expect(hatch(10, 20, 30, 12, 4).length).toBeGreaterThan(hatch(10, 20, 30, 12, 8).length);
});

test('names at the ends of lines keep their order, their distance and the room given', () => {
	fc.assert(
		fc.property(fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 6 }), (places) => {
			const moved = spread(places, 12, 0, 110);
			const sorted = [...moved].sort((a, b) => a - b);
			for (const [index, place] of sorted.entries()) {
				if (index > 0) expect(place - (sorted[index - 1] ?? 0)).toBeGreaterThanOrEqual(12 - 1e-9);
			}
			expect(Math.min(...moved)).toBeGreaterThanOrEqual(0);
			expect(Math.max(...moved)).toBeLessThanOrEqual(110);
		}),
	);
});
