import type { FigureDrawing } from '../figures/marks.ts';
import type { Plot } from '../types.ts';
import { drawCountBoard } from './count-board.ts';
import { drawEvidenceBoard } from './evidence-board.ts';
import { drawItemPerson } from './item-person.ts';
import { drawItemScatter } from './item-scatter.ts';
import { drawOptionCurves } from './option-curves.ts';
import { drawPatternBars } from './pattern-bars.ts';
import { drawScores } from './scores.ts';

/** Draws a plot as figures are drawn: plain shapes and text in ink on an opaque ground, px at 96 to the inch. Told apart by shape, place, hatching and words, never by colour. */
export function drawPlot(plot: Plot): FigureDrawing {
	switch (plot.kind) {
		case 'scores':
			return drawScores(plot);
		case 'item-person':
			return drawItemPerson(plot);
		case 'item-scatter':
			return drawItemScatter(plot);
		case 'option-curves':
			return drawOptionCurves(plot);
		case 'pattern-bars':
			return drawPatternBars(plot);
		case 'evidence-board':
			return drawEvidenceBoard(plot);
		case 'count-board':
			return drawCountBoard(plot);
		default:
			return plot satisfies never;
	}
}
