import { drawSheet, type FigureDrawing, lineMark } from '../figures/marks.ts';
import type { PatternBarsPlot } from '../types.ts';
import {
	type Axis,
	axisMarks,
	disc,
	labelSize,
	placeOn,
	plotText,
	plotWidth,
	roundSteps,
	rowHeight,
	rule,
	smallSize,
	wrappedText,
	writeShare,
} from './marks.ts';

const room = { label: 230, count: 165, top: 26, bottom: 30 };

/** A row a wrong idea: its share of the students as a disc with its interval on a line from 0, the counts at the right. */
export function drawPatternBars({ students, bars }: PatternBarsPlot): FigureDrawing {
	const heights = bars.map(({ label }) => rowHeight(label, room.label - 16, 28));
	const tops = heights.map((_unused, index) => room.top + heights.slice(0, index).reduce((sum, each) => sum + each, 0));
	const y = room.top + heights.reduce((sum, each) => sum + each, 0) + 6;
	const most = Math.max(0.1, ...bars.map(({ high = 0 }) => Math.ceil(high * 10) / 10));
	const axis: Axis = {
		from: 0,
		to: most,
		start: room.label,
		end: plotWidth - room.count,
		y,
		ticks: roundSteps(0, most, 6),
		write: writeShare,
	};
	const marks = bars.flatMap((bar, index) => {
		const middle = (tops[index] ?? 0) + (heights[index] ?? 0) / 2;
		const lines = wrappedText({ text: bar.label, x: 4, y: 0, anchor: 'start' }, room.label - 16).length;
		const first = middle - ((lines - 1) * labelSize * 1.2) / 2 + 5;
		const { repeated, low = 0, high = 0 } = bar;
		const line =
			repeated === undefined
				? []
				: [
						lineMark(placeOn(axis, low), middle, placeOn(axis, high), middle, 2),
						...[low, high].map((end) => {
							const x = placeOn(axis, end);
							return lineMark(x, middle - 4, x, middle + 4, 1.5);
						}),
						disc(placeOn(axis, students === 0 ? 0 : repeated / students), middle, 5),
					];
		return [
			lineMark(room.label, middle, axis.end, middle, 1, { stroke: rule }),
			...wrappedText({ text: bar.label, x: 4, y: first, anchor: 'start' }, room.label - 16),
			...line,
			plotText({ text: tellCounts(bar, students), x: axis.end + 10, y: middle + 4, anchor: 'start', size: smallSize }),
		];
	});
	return drawSheet(plotWidth, y + room.bottom, [
		...marks,
		...axisMarks(axis),
		plotText({
			text: 'share of students whose answers repeat it, with 95 % interval',
			x: 4,
			y: 16,
			anchor: 'start',
			size: smallSize,
		}),
	]);
}

function tellCounts({ repeated, hint }: PatternBarsPlot['bars'][number], students: number): string {
	if (repeated === undefined) return `few of ${students}`;
	return `${repeated} of ${students}${hint === undefined || hint === 0 ? '' : `, ${hint} more a hint`}`;
}

/** What the bars of wrong ideas show, in words. */
export function describePatternBars({ students, bars }: PatternBarsPlot): string {
	const list = bars.map((bar) => {
		const span =
			bar.low === undefined || bar.high === undefined || bar.repeated === undefined
				? ''
				: ` (interval ${writeShare(bar.low)} to ${writeShare(bar.high)})`;
		return `${bar.label}: ${tellCounts(bar, students)}${span}`;
	});
	return `Students whose answers are consistent with each wrong idea, of ${students}. ${list.join('; ')}.`;
}
