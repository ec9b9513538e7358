import type { Plot } from '../types.ts';
import { describeCountBoard } from './count-board.ts';
import { describeEvidenceBoard } from './evidence-board.ts';
import { describeItemPerson } from './item-person.ts';
import { describeItemScatter } from './item-scatter.ts';
import { describeOptionCurves } from './option-curves.ts';
import { describePatternBars } from './pattern-bars.ts';
import { describeScoresPlot } from './scores.ts';

/** The text alternative of a plot: what is seen, with its figures. It says nothing that the drawing does not show. */
export function describePlot(plot: Plot): string {
	switch (plot.kind) {
		case 'scores':
			return describeScoresPlot(plot);
		case 'item-person':
			return describeItemPerson(plot);
		case 'item-scatter':
			return describeItemScatter(plot);
		case 'option-curves':
			return describeOptionCurves(plot);
		case 'pattern-bars':
			return describePatternBars(plot);
		case 'evidence-board':
			return describeEvidenceBoard(plot);
		case 'count-board':
			return describeCountBoard(plot);
		default:
			return plot satisfies never;
	}
}
