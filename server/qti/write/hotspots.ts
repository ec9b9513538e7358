import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import type { FigureDrawing } from '../../../item-bank/figures/marks.ts';
import { layScale, offsetOf } from '../../../item-bank/figures/number-line-scale.ts';
import { invariant } from '../../../item-bank/invariant.ts';
import { element } from '../../../item-bank/markup/tree.ts';
import type { NumberLineFigure } from '../../../item-bank/types.ts';

/** A rectangle in whole pixels of a picture, from its left and top edge. */
export interface HotspotArea {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

/** A number line as a picture to click on. */
export interface HotspotPicture {
	/** Shown in pixels of the areas; even, so that half of it is whole too. */
	readonly drawing: FigureDrawing;
	/** One area for each tick, from the smallest, none touching its neighbour. */
	readonly areas: readonly HotspotArea[];
}

/** A line with so many ticks that none can be hit surely, at any size that fits a screen. */
export class FigureTooSmallError extends Error {
	readonly code = 'export-figure-too-small';

	constructor(message: string) {
		super(message);
		this.name = 'FigureTooSmallError';
	}
}

/** Smallest side of an area, pixels (WCAG 2.2, success criterion 2.5.8, target size minimum). */
export const smallestSide = 24;
/** Longest side of a picture that is shown without scrolling, pixels: common practice, no source. */
const longestSide = 900;
/** How far an area reaches to either side of the line, pixels. */
const reach = 22;

/**
 * Lays an area around each tick of the line as drawn. A line whose ticks stand too close is shown larger, up to what fits a
 * screen. Throws {@link FigureTooSmallError}. The figure must pass checkFigure.
 */
export function layHotspots(line: NumberLineFigure): HotspotPicture {
	const drawing = drawFigure(line);
	const scale = layScale(line);
	const step = smallestSide + 1;
	const factor = Math.max(1, step / scale.spacing);
	const [width, height] = [evenPixels(drawing.width * factor), evenPixels(drawing.height * factor)];
	if (Math.max(width, height) > longestSide) {
		const found = `${scale.ticks.length} ticks, which would take ${Math.max(width, height)} pixels`;
		const message = `expected a line on which each tick can be marked within ${longestSide} pixels, found ${found}`;
		throw new FigureTooSmallError(message);
	}
	// The distance of neighbours is whole, or the spacing rounded down: one pixel at least stays free between two areas.
	const half = Math.floor((Math.floor(scale.spacing * factor + 1e-9) - 1) / 2);
	const [middle, across] = axisOf(drawing);
	const isFlat = scale.orientation === 'horizontal';
	const centre = ((scale.ticks.length - 1) * scale.spacing) / 2;
	const areas = scale.ticks.map((tick) => {
		const away = offsetOf(scale, tick) - centre;
		const at = Math.round((isFlat ? middle + away : middle - away) * factor);
		const beside = Math.round(across * factor);
		const [low, high] = [Math.max(0, beside - reach), Math.min(isFlat ? height : width, beside + reach)];
		return isFlat
			? { left: at - half, top: low, right: at + half, bottom: high }
			: { left: low, top: at - half, right: high, bottom: at + half };
	});
	return { drawing: enlarge(drawing, width, height, factor), areas };
}

function evenPixels(length: number): number {
	return 2 * Math.ceil(length / 2 - 1e-9);
}

/** Where the middle of the line lies along it, and the line across it, px: its axis reaches equally far beyond both end ticks. */
function axisOf({ root }: FigureDrawing): readonly [along: number, across: number] {
	const axis = root.children.find((mark) => typeof mark !== 'string' && mark.name === 'line');
	invariant(axis && typeof axis !== 'string', 'the first line of a number line is its axis');
	const [x1, y1, x2, y2] = ['x1', 'y1', 'x2', 'y2'].map((name) => Number(axis.attributes[name]));
	invariant(x1 !== undefined && y1 !== undefined && x2 !== undefined && y2 !== undefined, 'a line has two ends');
	return y1 === y2 ? [(x1 + x2) / 2, y1] : [(y1 + y2) / 2, x1];
}

/** The drawing shown at a size, its ground reaching to all edges. */
function enlarge({ root }: FigureDrawing, width: number, height: number, factor: number): FigureDrawing {
	const [wide, high] = [width / factor, height / factor];
	const [ground, ...marks] = root.children;
	invariant(ground && typeof ground !== 'string' && ground.name === 'rect', 'a drawing begins with its ground');
	const attributes = { ...root.attributes, width, height, viewBox: `0 0 ${wide} ${high}` };
	const whole = element('rect', { ...ground.attributes, width: wide, height: high });
	return { width, height, root: element('svg', attributes, [whole, ...marks]) };
}
