import type { NumberLineFigure } from '../types.ts';
import { textSize, writeNumber } from './marks.ts';
import { chooseWindow, type NumberLineWindow } from './number-line-window.ts';
import { textWidth } from './text-width.ts';

/** A window laid out: px between ticks, its ticks from smallest to largest, and those that carry a number. */
export interface NumberLineScale extends NumberLineWindow {
	readonly orientation: 'horizontal' | 'vertical';
	readonly spacing: number;
	readonly ticks: readonly number[];
	readonly labelled: readonly number[];
}

const longestHorizontal = 612;
const widestSpacing = 48;
const longestVertical = 480;
/** Px between neighbouring numbers: less, and a minus could be read as joining them. */
const labelGap = 8;
const niceSteps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000];
const multiples = [1, 2, 4, 5, 10, 20, 50, 100];

/** Lays out a line. Lists of labels are taken as they are; labels for every tick are thinned until they stand clear. */
export function layScale(figure: NumberLineFigure): NumberLineScale {
	const window = chooseWindow(figure);
	const { from, to, tickEvery } = window;
	const intervals = Math.max(1, Math.floor((to - from) / tickEvery));
	const ticks = Array.from({ length: intervals + 1 }, (_, index) => from + index * tickEvery);
	const { orientation } = figure;
	const spacing = Math.max(
		4,
		orientation === 'horizontal' ? flatSpacing(window, intervals) : uprightSpacing(intervals),
	);
	const bare = { ...window, orientation, spacing, ticks, labelled: [] };
	return { ...bare, labelled: chooseLabels(figure, bare) };
}

function flatSpacing(window: NumberLineWindow, intervals: number): number {
	const ends = [window.from, window.to].map((end) => textWidth(writeNumber(end), textSize));
	return Math.min(
		Math.max(widestSpacing, ...ends.map((end) => Math.ceil(end) + 14)),
		Math.floor(longestHorizontal / intervals),
	);
}

function uprightSpacing(intervals: number): number {
	return Math.min(36, Math.floor(longestVertical / intervals));
}

/** Px from the smallest tick to a value. */
export function offsetOf(scale: NumberLineScale, value: number): number {
	return ((value - scale.from) / scale.tickEvery) * scale.spacing;
}

/** Whether the numbers at all these values stand clear of each other. */
export function standClear(scale: NumberLineScale, values: readonly number[]): boolean {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted.every((value, index) => {
		const next = sorted[index + 1];
		return next === undefined || offsetOf(scale, next) - offsetOf(scale, value) >= roomBetween(scale, value, next);
	});
}

function roomBetween(scale: NumberLineScale, a: number, b: number): number {
	if (scale.orientation === 'vertical') return textSize + 2;
	return (textWidth(writeNumber(a), textSize) + textWidth(writeNumber(b), textSize)) / 2 + labelGap;
}

function chooseLabels(figure: NumberLineFigure, scale: NumberLineScale): readonly number[] {
	const { from, to } = scale;
	const last = scale.ticks.at(-1) ?? to;
	const zero = from <= 0 && last >= 0 ? [0] : [];
	const labels = figure.labels ?? 'every-tick';
	switch (labels) {
		case 'every-tick':
			return thinLabels(scale);
		case 'ends':
			return [from, last];
		case 'ends-and-zero': {
			const all = [...new Set([from, ...zero, last])];
			return standClear(scale, all) ? all : [from, last];
		}
		case 'zero':
			return zero;
		default:
			return [...labels].sort((a, b) => a - b);
	}
}

function thinLabels(scale: NumberLineScale): readonly number[] {
	const round = multiples.filter((multiple) => multiple === 1 || niceSteps.includes(multiple * scale.tickEvery));
	for (const multiple of [...round, ...multiples]) {
		const labelled = everyNth(scale, multiple);
		if (standClear(scale, labelled)) return labelled;
	}
	return scale.ticks.slice(0, 1);
}

/** Every nth tick, counted so that zero, or else a round number, is among them. */
function everyNth(scale: NumberLineScale, n: number): readonly number[] {
	const anchor = scale.ticks.find((tick) => tick % (n * scale.tickEvery) === 0) ?? scale.from;
	return scale.ticks.filter((tick) => (tick - anchor) % (n * scale.tickEvery) === 0);
}
