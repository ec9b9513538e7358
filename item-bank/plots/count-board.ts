import { drawSheet, type FigureDrawing, lineMark } from '../figures/marks.ts';
import type { MarkupElement } from '../markup/tree.ts';
import type { CountBoardPlot } from '../types.ts';
import { plotText, plotWidth, rule, smallSize, widest, wrappedText } from './marks.ts';

const room = { head: 52, row: 28 };
/** Counts up to here are strokes in fives; LOOK.md. */
const mostStrokes = 25;

/** Counts as tally strokes in fives, a row a standard; a count nothing was asked for stays empty paper. */
export function drawCountBoard({ columns, rows }: CountBoardPlot): FigureDrawing {
	const left = Math.max(60, widest(rows.map(({ label }) => label)) + 16);
	const wide = (plotWidth - left) / Math.max(1, columns.length);
	const height = room.head + rows.length * room.row;
	const marks = [
		...columns.flatMap((text, column) =>
			wrappedText({ text, x: left + column * wide + 6, y: 14, anchor: 'start', size: smallSize }, wide - 8).slice(0, 3),
		),
		...rows.flatMap(({ label, counts }, row) => {
			const top = room.head + row * room.row;
			return [
				lineMark(0, top, plotWidth, top, 1, { stroke: rule }),
				plotText({ text: label, x: 4, y: top + 19, anchor: 'start' }),
				...counts.flatMap((count, column) => drawTally(count, left + column * wide + 6, top + 6, wide - 10)),
			];
		}),
		lineMark(0, height, plotWidth, height, 1, { stroke: rule }),
	];
	return drawSheet(plotWidth, height + 8, marks);
}

function drawTally(count: number, x: number, top: number, width: number): readonly MarkupElement[] {
	const five = 20;
	if (count === 0) return [];
	if (count > mostStrokes || Math.ceil(count / 5) * five > width) {
		return [plotText({ text: String(count), x, y: top + 13, anchor: 'start' })];
	}
	return Array.from({ length: count }, (_unused, index) => {
		const start = x + Math.floor(index / 5) * five;
		const within = index % 5;
		// The fifth stroke crosses the four before it.
		if (within === 4) return lineMark(start - 2, top + 13, start + 13, top + 2, 1.5);
		return lineMark(start + within * 3.6, top, start + within * 3.6, top + 15, 1.5);
	});
}

/** What the board of counts shows, in words, row by row. */
export function describeCountBoard({ columns, rows }: CountBoardPlot): string {
	const list = rows.map(({ label, counts }) => {
		const told = counts.flatMap((count, column) => (count === 0 ? [] : [`${count} in ${columns[column] ?? ''}`]));
		return `${label}: ${told.length === 0 ? 'none' : told.join(', ')}.`;
	});
	return `Items by standard. ${list.join(' ')}`;
}
