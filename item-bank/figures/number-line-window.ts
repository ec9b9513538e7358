import type { NumberLineFigure } from '../types.ts';

/** The ticks of a line: from, from + tickEvery, … to. */
export interface NumberLineWindow {
	readonly from: number;
	readonly to: number;
	readonly tickEvery: number;
}

/** Farthest value a line can show on either side (figure.schema.json). */
export const farthest = 1000;
const mostIntervals = 24;
const fewestIntervals = 10;
const steps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500];

/** Where the arrows of a line start and end: the start, then the end of each arrow. Empty without arrows. */
export function arrowStops(figure: NumberLineFigure): readonly number[] {
	if (figure.arrows === undefined) return [];
	const stops = [figure.start ?? 0];
	for (const length of figure.arrows) stops.push((stops.at(-1) ?? 0) + length);
	return stops;
}

/**
 * The window and ticks of a line. What the figure gives is kept; the rest is chosen so that start, arrow ends, points and
 * listed labels fall on ticks with at least one tick beyond them, zero is shown where that is possible, and there are at most 25 ticks:
 * ones where they fit, otherwise the widest of 2, 5, 10, 20, 25, 50, 100, 200, 250, 500 that leaves at least ten steps.
 */
export function chooseWindow(figure: NumberLineFigure): NumberLineWindow {
	const labels = typeof figure.labels === 'object' ? figure.labels : [];
	const marked = [...arrowStops(figure), ...(figure.points ?? []).map((point) => point.at), ...labels];
	const withZero = pickWindow(figure, [...marked, 0]);
	if (marked.length === 0 || fits(withZero, marked)) return withZero;
	const without = pickWindow(figure, marked);
	return fits(without, marked) ? without : withZero;
}

function fits(window: NumberLineWindow, values: readonly number[]): boolean {
	return values.every((value) => (value - window.from) % window.tickEvery === 0);
}

function pickWindow(figure: NumberLineFigure, values: readonly number[]): NumberLineWindow {
	const reach = reachOf(values);
	if (figure.tickEvery !== undefined) return growWindow(figure, windowWith(figure, reach, figure.tickEvery));
	const all = steps.map((step) => windowWith(figure, reach, step));
	const narrow = all.filter((window) => intervalsOf(window) <= mostIntervals && isWhole(window));
	const exact = narrow.filter((window) => fits(window, values));
	const [first] = exact;
	const roomy = exact.findLast((window) => intervalsOf(window) >= fewestIntervals);
	const chosen = first?.tickEvery === 1 ? first : (roomy ?? first ?? narrow[0] ?? all[0]);
	return growWindow(figure, chosen ?? windowWith(figure, reach, 1));
}

/** The smallest and the largest value, as far as a line can show them. */
function reachOf(values: readonly number[]): readonly [smallest: number, largest: number] {
	const within = (value: number) => Math.max(-farthest, Math.min(farthest, value));
	return [within(Math.min(...values)), within(Math.max(...values))];
}

function intervalsOf(window: NumberLineWindow): number {
	return (window.to - window.from) / window.tickEvery;
}

function isWhole(window: NumberLineWindow): boolean {
	const meetsZero = window.from > 0 || window.to < 0 || window.from % window.tickEvery === 0;
	return Number.isInteger(intervalsOf(window)) && meetsZero;
}

/** The values and one tick beyond them on either side, where the figure does not say. */
function windowWith(
	figure: NumberLineFigure,
	[smallest, largest]: readonly [number, number],
	tickEvery: number,
): NumberLineWindow {
	const anchor = figure.from ?? figure.to ?? 0;
	const down = (value: number) => anchor + Math.floor((value - anchor) / tickEvery) * tickEvery;
	const up = (value: number) => anchor + Math.ceil((value - anchor) / tickEvery) * tickEvery;
	const lowest = down(smallest);
	const highest = up(largest);
	const from = figure.from ?? (canReach(lowest - tickEvery) ? lowest - tickEvery : lowest);
	const to = figure.to ?? (canReach(highest + tickEvery) ? highest + tickEvery : highest);
	return { from, to, tickEvery };
}

/** Adds ticks until there are ten steps, on the side that reaches less far, so that short lines end up even about zero. */
function growWindow(figure: NumberLineFigure, window: NumberLineWindow): NumberLineWindow {
	const { tickEvery } = window;
	let { from, to } = window;
	while ((to - from) / tickEvery < fewestIntervals) {
		const canDown = figure.from === undefined && canReach(from - tickEvery);
		const canUp = figure.to === undefined && canReach(to + tickEvery);
		if (!canDown && !canUp) break;
		if (canDown && (!canUp || Math.abs(from) < Math.abs(to))) from -= tickEvery;
		else to += tickEvery;
	}
	return { from, to, tickEvery };
}

function canReach(value: number): boolean {
	return Math.abs(value) <= farthest;
}
