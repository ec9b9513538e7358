import { checkFigure } from '../../../item-bank/figures/check-figure.ts';
import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import type { FigureDrawing } from '../../../item-bank/figures/marks.ts';
import { chooseWindow } from '../../../item-bank/figures/number-line-window.ts';
import { placesOf } from '../../../item-bank/items/kinds/point.ts';
import type { NumberLineFigure, PointItem } from '../../../item-bank/types.ts';

/** A tick that can be marked, where it stands on the drawing and how it is called without telling a number not to be read. */
export interface LinePlace {
	readonly value: number;
	/** Px from the left and from the top of the drawing. */
	readonly x: number;
	readonly y: number;
	/** A number only where a label can be read, else ticks from the nearest label. */
	readonly name: string;
}

/** A line to mark a place on. */
export interface MarkableLine {
	readonly drawing: FigureDrawing;
	readonly description: string;
	/** From the smallest number. */
	readonly places: readonly LinePlace[];
	/** Index of the place where a mark starts out: zero, else the first. */
	readonly home: number;
}

/** Lays out the line of an item; undefined for one that cannot be drawn. */
export function layPlaces(item: PointItem): MarkableLine | undefined {
	if (checkFigure(item.line).length > 0) return undefined;
	// The window is fixed first: a mark must not move what the line shows.
	const line: NumberLineFigure = { ...item.line, ...chooseWindow(item.line) };
	const places = placesOf(item).map((value) => layPlace(line, value));
	const home = Math.max(
		0,
		places.findIndex(({ value }) => value === 0),
	);
	return { drawing: drawFigure(line), description: describeFigure(line), places, home };
}

/** The core draws points last and describes them last, so a line with one more point tells where and what it is. */
function layPlace(line: NumberLineFigure, value: number): LinePlace {
	const drawn = drawFigure({ ...line, points: [...(line.points ?? []), { at: value }] }).root.children.at(-1);
	const { cx = '0', cy = '0' } = typeof drawn === 'object' ? drawn.attributes : {};
	const { arrows: _arrows, start: _start, arrowLabels: _labels, ...bare } = line;
	const name = describeFigure({ ...bare, points: [{ at: value }] });
	return { value, x: Number(cx), y: Number(cy), name: /A point is at (.*)\.$/.exec(name)?.[1] ?? '' };
}
