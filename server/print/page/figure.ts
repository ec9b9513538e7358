import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { type FigureDrawing, ink } from '../../../item-bank/figures/marks.ts';
import { invariant } from '../../../item-bank/invariant.ts';
import type { MarkupElement } from '../../../item-bank/markup/tree.ts';
import { describePlot } from '../../../item-bank/plots/describe-plot.ts';
import { drawPlot } from '../../../item-bank/plots/draw-plot.ts';
import type { Figure, Plot } from '../../../item-bank/types.ts';
import { type Box, wrapFigure } from './box.ts';
import { textWidth } from './fonts.ts';
import { black, type Mark, type Paint } from './marks.ts';

/** Points of a px at 96 to the inch. */
const pointsPerPx = 0.75;

/** Size of a figure as drawn, points: its true scale. */
export function figureSize(figure: Figure): { readonly width: number; readonly height: number } {
	const { width, height } = drawFigure(figure);
	return { width: width * pointsPerPx, height: height * pointsPerPx };
}

/** A figure as drawing calls in black, `scale` times as large as drawn, with its description. */
export function layFigure(figure: Figure, scale: number): Box {
	return wrapFigure(layDrawing(drawFigure(figure), pointsPerPx * scale), describeFigure(figure));
}

/** A plot as drawing calls in black, at true scale or as much smaller as the room asks, points, with its description. */
export function layPlot(plot: Plot, room: { readonly width: number; readonly height: number }): Box {
	const drawing = drawPlot(plot);
	const factor = Math.min(pointsPerPx, room.width / drawing.width, room.height / drawing.height);
	return wrapFigure(layDrawing(drawing, factor), describePlot(plot));
}

function layDrawing({ width, height, root }: FigureDrawing, factor: number): Box {
	return {
		width: width * factor,
		height: height * factor,
		// The first mark is the ground, which paper has already.
		place: (x, y) => root.children.slice(1).map((child) => drawElement(child, { x, y, factor })),
	};
}

interface Transform {
	readonly x: number;
	readonly y: number;
	readonly factor: number;
}

function drawElement(node: MarkupElement | string, at: Transform): Mark {
	invariant(typeof node !== 'string', 'expected a figure of shapes, found loose text');
	const { name, attributes, children } = node;
	const number = (key: string) => Number(attributes[key] ?? 0);
	const x = (key: string) => at.x + number(key) * at.factor;
	const y = (key: string) => at.y + number(key) * at.factor;
	const paint = readPaint(attributes, at.factor);
	switch (name) {
		case 'rect': {
			const rounding = number('rx') * at.factor;
			const size = { width: number('width') * at.factor, height: number('height') * at.factor };
			return { kind: 'rect', x: x('x'), y: y('y'), ...size, ...(rounding > 0 ? { rounding } : {}), paint };
		}
		case 'line':
			return { kind: 'line', x1: x('x1'), y1: y('y1'), x2: x('x2'), y2: y('y2'), paint };
		case 'circle':
			return { kind: 'circle', x: x('cx'), y: y('cy'), radius: number('r') * at.factor, paint };
		case 'polygon': {
			const points = (attributes.points ?? '').split(' ').map((pair) => {
				const [across = 0, down = 0] = pair.split(',').map(Number);
				return [at.x + across * at.factor, at.y + down * at.factor] as const;
			});
			return { kind: 'polygon', points, paint };
		}
		case 'text': {
			const text = String(children[0] ?? '');
			const size = number('font-size') * at.factor;
			const font = attributes['font-family']?.includes('Sans') ? 'sans' : 'serif';
			const width = textWidth(text, font, size);
			const anchor = attributes['text-anchor'];
			const shift = anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0;
			return { kind: 'text', x: x('x') - shift, y: y('y'), text, font, size };
		}
		default:
			throw new Error(`expected a figure of rect, line, circle, polygon and text, found ${name}`);
	}
}

function readPaint(attributes: Readonly<Record<string, string>>, factor: number): Paint {
	const tone = (value: string) => (value === ink ? black : value);
	const { fill, stroke } = attributes;
	const dash = attributes['stroke-dasharray']?.split(' ').map((length) => Number(length) * factor);
	return {
		...(fill === undefined || fill === 'none' ? {} : { fill: tone(fill) }),
		...(stroke === undefined || stroke === 'none' ? {} : { stroke: tone(stroke) }),
		...(stroke === undefined ? {} : { width: Number(attributes['stroke-width'] ?? 1) * factor }),
		...(dash ? { dash } : {}),
	};
}
