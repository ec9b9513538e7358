import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { counterSize, type FigureDrawing, ink, paper, textSize } from '../../../item-bank/figures/marks.ts';
import { textWidth } from '../../../item-bank/figures/text-width.ts';
import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { Figure } from '../../../item-bank/types.ts';
import { projectRoot } from '../../../server/project-root.ts';
import { writeXml } from '../../../server/xml.ts';
import { counters, groups, lines, typedLines } from './figure-arbitraries.ts';

const fixtures = join(projectRoot, 'tests/fixtures/figures');

const drawn: Readonly<Record<string, Figure>> = {
	'counters-two-rows': { kind: 'counters', plus: 5, minus: 3 },
	'counters-one-sign': { kind: 'counters', plus: 0, minus: 4 },
	'counters-ringed': { kind: 'counters', plus: 4, minus: 6, ringedPairs: 4 },
	'counters-taken-away': { kind: 'counters', plus: 0, minus: 7, removed: { sign: 'minus', count: 4 } },
	'counters-pairs-added': { kind: 'counters', plus: 5, minus: 0, addedPairs: 3, removed: { sign: 'minus', count: 3 } },
	'counters-wrapped': { kind: 'counters', plus: 17, minus: 13, ringedPairs: 2 },
	'counters-pairs-below': { kind: 'counters', plus: 9, minus: 2, addedPairs: 6, removed: { sign: 'plus', count: 11 } },
	'groups-in-one-row': { kind: 'counter-groups', groups: 4, each: 3, sign: 'minus' },
	'groups-wrapped': { kind: 'counter-groups', groups: 7, each: 8, sign: 'plus' },
	'line-two-arrows': { kind: 'number-line', orientation: 'horizontal', from: -10, to: 10, arrows: [-3, 5] },
	'line-labelled-arrows': { kind: 'number-line', orientation: 'horizontal', arrows: [5, -8], arrowLabels: true },
	'line-from-start': { kind: 'number-line', orientation: 'horizontal', start: -6, arrows: [9] },
	'line-repeated-arrows': { kind: 'number-line', orientation: 'horizontal', arrows: [-3, -3, -3, -3] },
	'line-thinned-labels': {
		kind: 'number-line',
		orientation: 'horizontal',
		from: -20,
		to: 20,
		tickEvery: 1,
		points: [{ at: -13, label: 'R' }],
	},
	'line-points': {
		kind: 'number-line',
		orientation: 'horizontal',
		labels: 'ends-and-zero',
		points: [
			{ at: -4, label: 'A' },
			{ at: 3, label: 'B' },
		],
	},
	'line-upright-arrows': { kind: 'number-line', orientation: 'vertical', arrows: [20, -35], arrowLabels: true },
	'line-upright-points': {
		kind: 'number-line',
		orientation: 'vertical',
		labels: [-200, 0],
		points: [{ at: -150, label: 'G' }, { at: 100 }],
	},
};

function elementsOf(drawing: FigureDrawing, name: string): readonly MarkupElement[] {
	return drawing.root.children.filter(
		(child): child is MarkupElement => typeof child !== 'string' && child.name === name,
	);
}

function discs(drawing: FigureDrawing, fill: string): number {
	return elementsOf(drawing, 'circle').filter(({ attributes }) => attributes.fill === fill && Number(attributes.r) > 10)
		.length;
}

function textBoxes(drawing: FigureDrawing) {
	return elementsOf(drawing, 'text').map(({ attributes, children }) => {
		const size = Number(attributes['font-size']);
		const width = textWidth(String(children[0]), size);
		const shift = { start: 0, middle: width / 2, end: width }[attributes['text-anchor'] ?? 'start'] ?? 0;
		const left = Number(attributes.x) - shift;
		const bottom = Number(attributes.y);
		return { text: String(children[0]), left, right: left + width, top: bottom - size * 0.7, bottom };
	});
}

describe('snapshots, to be looked at when they change (UPDATE_FIXTURES=1 writes them)', () => {
	test.each(Object.entries(drawn))('%s is drawn as in its reviewed file', (name, figure) => {
		expect(checkFigure(figure)).toEqual([]);
		const file = join(fixtures, `${name}.svg`);
		const svg = `${writeXml(drawFigure(figure).root).replaceAll('><', '>\n<')}\n`;
		if (process.env.UPDATE_FIXTURES) writeFileSync(file, svg);
		expect(readFileSync(file, 'utf8')).toBe(svg);
	});

	test('every reviewed file belongs to a figure', () => {
		const expected = Object.keys(drawn).map((name) => `${name}.svg`);
		expect(readdirSync(fixtures).sort()).toEqual(expected.sort());
	});
});

test('counters: as many discs of each sign as the model counts, each with its sign, rings and crosses', () => {
	fc.assert(
		fc.property(counters, (figure) => {
			const drawing = drawFigure(figure);
			const added = figure.addedPairs ?? 0;
			expect(discs(drawing, ink)).toBe(figure.plus + added);
			expect(discs(drawing, paper)).toBe(figure.minus + added);
			const dashed = elementsOf(drawing, 'rect').filter(({ attributes }) => attributes['stroke-dasharray']);
			expect(dashed.length).toBe(added > 0 ? 1 : 0);
			const rings = elementsOf(drawing, 'rect').filter(
				({ attributes }) => attributes.rx && !attributes['stroke-dasharray'],
			);
			expect(rings.length).toBe(figure.ringedPairs ?? 0);
			const crosses = elementsOf(drawing, 'line').filter(({ attributes }) => attributes.stroke === ink);
			expect(crosses.length).toBe(2 * (figure.removed?.count ?? 0));
			const bars = elementsOf(drawing, 'rect').filter(
				({ attributes }) => attributes.width === '15' && attributes.height === '3',
			);
			expect(bars.length).toBe(figure.plus + figure.minus + 2 * added);
		}),
	);
});

test('counters: every pair stands in one column, plus above minus, and no two discs touch', () => {
	fc.assert(
		fc.property(counters, (figure) => {
			const centres = elementsOf(drawFigure(figure), 'circle').map(({ attributes }) => ({
				x: Number(attributes.cx),
				y: Number(attributes.cy),
				isPlus: attributes.fill === ink,
			}));
			const touching = centres.some((one, index) =>
				centres.slice(index + 1).some((other) => Math.hypot(one.x - other.x, one.y - other.y) <= counterSize),
			);
			expect(touching).toBe(false);
			const pairs = centres.filter((one) =>
				centres.some((other) => !other.isPlus && other.x === one.x && other.y === one.y + 38),
			);
			const plusInPairs = pairs.filter((one) => one.isPlus).length;
			expect(plusInPairs).toBe(Math.min(figure.plus, figure.minus) + (figure.addedPairs ?? 0));
		}),
	);
});

test('groups: one frame for each group, as many discs as groups times each, all of one sign', () => {
	fc.assert(
		fc.property(groups, (figure) => {
			const drawing = drawFigure(figure);
			const [own, other] = figure.sign === 'plus' ? [ink, paper] : [paper, ink];
			expect(discs(drawing, own)).toBe(figure.groups * figure.each);
			expect(discs(drawing, other)).toBe(0);
			expect(elementsOf(drawing, 'rect').filter(({ attributes }) => attributes.rx).length).toBe(figure.groups);
		}),
	);
});

test('lines: no two texts touch, none leaves the sheet, and a minus is never a hyphen', () => {
	fc.assert(
		fc.property(fc.oneof(lines, typedLines), (figure) => {
			fc.pre(checkFigure(figure).length === 0);
			const drawing = drawFigure(figure);
			const boxes = textBoxes(drawing);
			const wrong = boxes.filter(({ text }) => !/^(?:[+−]?\d+|[A-Z])$/.test(text));
			const outside = boxes.filter(
				({ left, right, top, bottom }) => left < 0 || top < 0 || right > drawing.width || bottom > drawing.height,
			);
			const touching = boxes.flatMap((one, index) =>
				boxes
					.slice(index + 1)
					.filter(
						(other) =>
							one.right >= other.left && other.right >= one.left && one.bottom >= other.top && other.bottom >= one.top,
					)
					.map((other) => `${one.text} and ${other.text}`),
			);
			expect({ wrong, outside, touching }).toEqual({ wrong: [], outside: [], touching: [] });
		}),
		{ numRuns: 300 },
	);
});

test('lines: each arrow head points at where its arrow ends', () => {
	const drawing = drawFigure({ kind: 'number-line', orientation: 'horizontal', from: -10, to: 10, arrows: [-3, 5] });
	const tickX = (value: number) =>
		elementsOf(drawing, 'text').find(({ children }) => children[0] === value.toString().replace('-', '−'))?.attributes
			.x;
	const tips = elementsOf(drawing, 'polygon').map(({ attributes }) => attributes.points?.split(',')[0]);
	expect(tips.slice(2)).toEqual([tickX(-3), tickX(2)]);
});

/** How far each shape reaches across and down; texts have a test of their own. */
const extents: Readonly<Record<string, (at: (name: string) => number) => readonly [number[], number[]]>> = {
	rect: (at) => [
		[at('x'), at('x') + at('width')],
		[at('y'), at('y') + at('height')],
	],
	line: (at) => [
		[at('x1'), at('x2')],
		[at('y1'), at('y2')],
	],
	circle: (at) => [
		[at('cx') - at('r'), at('cx') + at('r')],
		[at('cy') - at('r'), at('cy') + at('r')],
	],
	polygon: () => [[], []],
	text: (at) => [[at('x')], [at('y')]],
};

function extentOf({ name, attributes }: MarkupElement): {
	readonly xs: readonly number[];
	readonly ys: readonly number[];
} {
	const [xs = [], ys = []] = extents[name]?.((attribute) => Number(attributes[attribute])) ?? [];
	const corners = (attributes.points ?? '').split(' ').filter((corner) => corner !== '');
	const places = corners.map((corner) => corner.split(',').map(Number));
	return { xs: [...xs, ...places.map(([x = -1]) => x)], ys: [...ys, ...places.map(([, y = -1]) => y)] };
}

test.each([counters, groups, lines] as fc.Arbitrary<Figure>[])(
	'all marks lie on the sheet and only plain shapes are used (%#)',
	(figures) => {
		fc.assert(
			fc.property(figures, (figure) => {
				fc.pre(checkFigure(figure).length === 0);
				const { root, width, height } = drawFigure(figure);
				expect(root.attributes).toMatchObject({
					width: `${width}`,
					height: `${height}`,
					viewBox: `0 0 ${width} ${height}`,
				});
				const wrong = root.children.filter((child) => {
					if (typeof child === 'string' || !(child.name in extents) || 'style' in child.attributes) return true;
					const { xs, ys } = extentOf(child);
					return Math.min(...xs, ...ys) < 0 || Math.max(...xs) > width || Math.max(...ys) > height;
				});
				expect(wrong).toEqual([]);
			}),
		);
	},
);

test('figures fit the width of a page and its text and counters are large enough to read', () => {
	fc.assert(
		fc.property(fc.oneof<fc.Arbitrary<Figure>[]>(counters, groups, lines), (figure) => {
			fc.pre(checkFigure(figure).length === 0);
			// 7 in of a letter page with margins of 3/4 in: common practice, no source.
			expect(drawFigure(figure).width).toBeLessThanOrEqual(7 * 96);
		}),
	);
	expect(textSize).toBeGreaterThanOrEqual(14);
	expect(counterSize).toBeGreaterThanOrEqual(26);
});

test('the two discs differ in lightness as ink and paper do, by more than 7 to 1', () => {
	expect(contrast(ink, paper)).toBeGreaterThan(7);
});

/** Contrast ratio as WCAG 2.2 defines it (relative luminance, sRGB). */
function contrast(one: string, other: string): number {
	const luminance = (colour: string) => {
		const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
			const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
			return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
		});
		return 0.2126 * r + 0.7152 * g + 0.0722 * b;
	};
	const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
	return (light + 0.05) / (dark + 0.05);
}
