import { element, type MarkupElement } from '../markup/tree.ts';
import type { CounterSign } from '../types.ts';
import { capHeight, textWidth } from './text-width.ts';

/**
 * A figure as drawn: size in px at 96 to the inch, and the `svg` element. Below it stand only rect, line, circle, polygon
 * and text, in painting order, with presentation attributes and no grouping, so that any surface can paint them.
 */
export interface FigureDrawing {
	readonly width: number;
	readonly height: number;
	readonly root: MarkupElement;
}

/** Blue-black ink of every line, filled disc and letter. */
export const ink = '#1b2a41';
/** Ground of every figure and of minus discs. */
export const paper = '#ffffff';
/** Size of every text in a figure, px. */
export const textSize = 16;
/** Diameter of a counter, px. */
export const counterSize = 28;

const fontFamily = "'Source Serif 4', serif";
const radius = counterSize / 2;

/** A text with its place: `x` at the anchor, `y` on the baseline. */
export interface Label {
	readonly text: string;
	readonly x: number;
	readonly y: number;
	readonly anchor: 'start' | 'middle' | 'end';
}

/** An upright rectangle, px. */
export interface Box {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** A number as figures write it: digits, with U+2212 before them when negative. */
export function writeNumber(value: number): string {
	return value < 0 ? `−${-value}` : String(value);
}

/** Wraps marks into an `svg` element on an opaque ground. Sizes are rounded up to whole px. */
export function drawSheet(width: number, height: number, marks: readonly MarkupElement[]): FigureDrawing {
	const wide = Math.ceil(width);
	const high = Math.ceil(height);
	const size = { width: wide, height: high };
	const ground = element('rect', { x: 0, y: 0, ...size, fill: paper });
	const attributes = { xmlns: 'http://www.w3.org/2000/svg', ...size, viewBox: `0 0 ${wide} ${high}` };
	return { ...size, root: element('svg', attributes, [ground, ...marks]) };
}

/** Px with at most two decimals, so that drawings have one text form. */
export function roundPx(value: number): number {
	return Math.round(value * 100) / 100 + 0;
}

/** A line of the given stroke width, in ink unless told otherwise. */
export function lineMark(
	x1: number,
	y1: number,
	x2: number,
	y2: number,
	strokeWidth: number,
	options: { readonly stroke?: string; readonly dash?: string } = {},
): MarkupElement {
	return element('line', {
		x1: roundPx(x1),
		y1: roundPx(y1),
		x2: roundPx(x2),
		y2: roundPx(y2),
		stroke: options.stroke ?? ink,
		'stroke-width': strokeWidth,
		'stroke-dasharray': options.dash,
	});
}

/** A filled polygon in ink. */
export function polygonMark(points: readonly (readonly [number, number])[]): MarkupElement {
	return element('polygon', { points: points.map(([x, y]) => `${roundPx(x)},${roundPx(y)}`).join(' '), fill: ink });
}

/** An outlined rectangle with rounded corners, dashed when a dash pattern is given. */
export function frameMark(box: Box, rounding: number, dash?: string): MarkupElement {
	return element('rect', {
		x: box.x,
		y: box.y,
		width: box.width,
		height: box.height,
		rx: rounding,
		fill: 'none',
		stroke: ink,
		'stroke-width': 1.5,
		'stroke-dasharray': dash,
	});
}

/** The text element of a label. */
export function textMark(label: Label): MarkupElement {
	const attributes = {
		x: roundPx(label.x),
		y: roundPx(label.y),
		'text-anchor': label.anchor,
		'font-family': fontFamily,
		'font-size': textSize,
		fill: ink,
	};
	return element('text', attributes, [label.text]);
}

/** The box that a label's letters fill. */
export function labelBox(label: Label): Box {
	const width = textWidth(label.text, textSize);
	const shift = label.anchor === 'start' ? 0 : label.anchor === 'middle' ? width / 2 : width;
	const height = capHeight * textSize;
	return { x: label.x - shift, y: label.y - height, width, height };
}

/** A patch of paper under a label, which keeps lines off its letters. */
export function clearingMark(label: Label): MarkupElement {
	const box = labelBox(label);
	const [x, y] = [roundPx(box.x - 4), roundPx(box.y - 4)];
	return element('rect', { x, y, width: roundPx(box.width + 8), height: roundPx(box.height + 8), fill: paper });
}

/** A counter centred at x, y: plus is a filled disc with a light sign, minus an outlined disc with a dark sign. */
export function counterMarks(sign: CounterSign, x: number, y: number): readonly MarkupElement[] {
	return [discMark(sign, x, y), ...signMarks(sign, x, y)];
}

/**
 * A counter crossed out from corner to corner. On a dark disc the cross is cased in paper; it runs behind the sign so
 * that what was taken away can still be read.
 */
export function crossedCounterMarks(sign: CounterSign, x: number, y: number): readonly MarkupElement[] {
	const reach = radius + 2;
	const cross = [-1, 1].map((slope) => [x - reach, y - slope * reach, x + reach, y + slope * reach] as const);
	const casing = sign === 'plus' ? cross.map((ends) => lineMark(...ends, 6, { stroke: paper })) : [];
	const strokes = cross.map((ends) => lineMark(...ends, 2.5));
	const ground = sign === 'plus' ? ink : paper;
	const backing = barsOf(sign).map(([width, height]) => barMark(x, y, width + 4, height + 4, ground));
	return [discMark(sign, x, y), ...casing, ...strokes, ...backing, ...signMarks(sign, x, y)];
}

function discMark(sign: CounterSign, x: number, y: number): MarkupElement {
	if (sign === 'plus') return element('circle', { cx: x, cy: y, r: radius, fill: ink });
	return element('circle', { cx: x, cy: y, r: radius - 1, fill: paper, stroke: ink, 'stroke-width': 2 });
}

function signMarks(sign: CounterSign, x: number, y: number): readonly MarkupElement[] {
	return barsOf(sign).map(([width, height]) => barMark(x, y, width, height, sign === 'plus' ? paper : ink));
}

function barsOf(sign: CounterSign): readonly (readonly [number, number])[] {
	const across = [15, 3] as const;
	return sign === 'plus' ? [across, [3, 15]] : [across];
}

function barMark(x: number, y: number, width: number, height: number, fill: string): MarkupElement {
	return element('rect', { x: x - width / 2, y: y - height / 2, width, height, fill });
}
