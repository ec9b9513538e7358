import type { Figure } from '../types.ts';
import { drawCounterGroups } from './counter-groups.ts';
import { drawCounters } from './counters.ts';
import type { FigureDrawing } from './marks.ts';
import { drawNumberLine } from './number-line.ts';

/** Draws a figure as plain shapes and text in ink on an opaque ground. The figure must pass checkFigure. */
export function drawFigure(figure: Figure): FigureDrawing {
	switch (figure.kind) {
		case 'counters':
			return drawCounters(figure);
		case 'counter-groups':
			return drawCounterGroups(figure);
		case 'number-line':
			return drawNumberLine(figure);
		default:
			return figure satisfies never;
	}
}
