import { ink, type Label, lineMark, paper, roundPx } from '../figures/marks.ts';
import { element, type MarkupElement } from '../markup/tree.ts';
import { breakLines, sansWidth } from './text-width.ts';

/** Sizes of text in plots, px: labels, and figures beside marks. */
export const labelSize = 14;
/** See {@link labelSize}. */
export const smallSize = 12;
/** Rules of the paper behind a plot, and marks that may fade on a copier without loss. */
export const rule = '#b8b8b8';
/** Width of a plot, px. */
export const plotWidth = 680;

/** A text of a plot. */
export interface PlotLabel extends Label {
	readonly size?: number;
}

/** The text element of a label, in the sans of the bank. */
export function plotText({ text, x, y, anchor, size = labelSize }: PlotLabel): MarkupElement {
	return element(
		'text',
		{
			x: roundPx(x),
			y: roundPx(y),
			'text-anchor': anchor,
			'font-family': "'Source Sans 3', sans-serif",
			'font-size': size,
			fill: ink,
		},
		[text],
	);
}

/** Lines of a text that wraps within a width, the first on baseline y. */
export function wrappedText(label: PlotLabel, width: number): readonly MarkupElement[] {
	const size = label.size ?? labelSize;
	return breakLines(label.text, size, width).map((text, line) =>
		plotText({ ...label, text, y: label.y + line * size * 1.2 }),
	);
}

/** A disc, filled with ink or with paper. */
export function disc(x: number, y: number, radius: number, isFilled = true): MarkupElement {
	return element('circle', {
		cx: roundPx(x),
		cy: roundPx(y),
		r: radius,
		fill: isFilled ? ink : paper,
		stroke: ink,
		'stroke-width': 1.5,
	});
}

/** A filled polygon in ink. */
export function shape(points: readonly (readonly [number, number])[]): MarkupElement {
	return element('polygon', { points: points.map(([x, y]) => `${roundPx(x)},${roundPx(y)}`).join(' '), fill: ink });
}

/** An upright rectangle, outlined, filled with ink when asked. */
export function block(x: number, y: number, width: number, height: number, isFilled = false): MarkupElement {
	return element('rect', {
		x: roundPx(x),
		y: roundPx(y),
		width: roundPx(width),
		height: roundPx(height),
		fill: isFilled ? ink : paper,
		stroke: ink,
		'stroke-width': 1,
	});
}

/** Strokes rising to the right within a rectangle, `step` px apart along its top: shading that survives a copier. */
export function hatch(x: number, y: number, width: number, height: number, step: number): readonly MarkupElement[] {
	const marks: MarkupElement[] = [];
	for (let start = step / 2; start < width + height; start += step) {
		// A stroke runs from the left or bottom side up to the top or right side, both on x + y = start.
		const [x1, y1] = start <= height ? [0, start] : [start - height, height];
		const [x2, y2] = start <= width ? [start, 0] : [width, start - width];
		marks.push(lineMark(x + x1, y + y1, x + x2, y + y2, 1));
	}
	return marks;
}

/** A number line under a plot. */
export interface Axis {
	readonly from: number;
	readonly to: number;
	/** px of both ends. */
	readonly start: number;
	readonly end: number;
	readonly y: number;
	readonly ticks: readonly number[];
	readonly write: (value: number) => string;
}

/** Px of a value on an axis. */
export function placeOn({ from, to, start, end }: Pick<Axis, 'from' | 'to' | 'start' | 'end'>, value: number): number {
	return start + ((value - from) / (to - from)) * (end - start);
}

/** A number line with ticks and figures below. */
export function axisMarks(axis: Axis): readonly MarkupElement[] {
	const { start, end, y, ticks, write } = axis;
	return [
		lineMark(start, y, end, y, 1.5),
		...ticks.flatMap((tick) => {
			const x = placeOn(axis, tick);
			return [
				lineMark(x, y - 4, x, y + 4, 1.25),
				plotText({ text: write(tick), x, y: y + 18, anchor: 'middle', size: smallSize }),
			];
		}),
	];
}

/** Round steps from the least to the most of a range, about `wanted` of them or fewer. */
export function roundSteps(from: number, to: number, wanted: number): readonly number[] {
	const rough = (to - from) / wanted;
	const grain = 10 ** Math.floor(Math.log10(rough));
	const step = [1, 2, 5, 10].map((each) => each * grain).find((each) => each >= rough - 1e-9) ?? grain;
	const first = Math.ceil(from / step - 1e-9);
	const last = Math.floor(to / step + 1e-9);
	return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}

/** A share in whole per cent. */
export function writeShare(share: number): string {
	return `${Math.round(share * 100)} %`;
}

/** A number with a true minus and at most so many decimals. */
export function writeFigure(value: number, digits = 1): string {
	const rounded = Number(value.toFixed(digits)) + 0;
	return rounded < 0 ? `−${-rounded}` : String(rounded);
}

/** Lines of text and the room they take, px: for labels at the left of rows. */
export function rowHeight(text: string, width: number, least: number): number {
	return Math.max(least, breakLines(text, labelSize, width).length * labelSize * 1.2 + 10);
}

/** Widest of some texts, px. */
export function widest(texts: readonly string[], size = labelSize): number {
	return Math.max(0, ...texts.map((text) => sansWidth(text, size)));
}

/** Moves places apart so that they stand `least` px from each other in their order, from `from` to `to` where there is room. */
export function spread(places: readonly number[], least: number, from: number, to: number): readonly number[] {
	const order = [...places.keys()].sort((a, b) => (places[a] as number) - (places[b] as number));
	const moved: number[] = [...places];
	let last = from - least;
	for (const index of order) {
		last = Math.max(last + least, moved[index] as number);
		moved[index] = last;
	}
	let next = Math.max(to, from + (places.length - 1) * least) + least;
	for (const index of [...order].reverse()) {
		next = Math.min(next - least, moved[index] as number);
		moved[index] = next;
	}
	return moved;
}
