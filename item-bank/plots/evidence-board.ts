import { drawSheet, type FigureDrawing, lineMark } from '../figures/marks.ts';
import type { MarkupElement } from '../markup/tree.ts';
import type { EvidenceBoardPlot, EvidenceSpot } from '../types.ts';
import { block, disc, hatch, labelSize, plotText, plotWidth, rule, smallSize, widest, writeShare } from './marks.ts';

const room = { top: 44, row: 58, swatch: 18 };

/**
 * The board: in each cell the share of points on a line from 0 to 100 with its interval, students and items below. The swatch at
 * its left is hatched the denser the fewer points were earned, so that the eye finds the weak cells in grey too.
 */
export function drawEvidenceBoard({ columns, rows }: EvidenceBoardPlot): FigureDrawing {
	const left = Math.max(60, widest(rows.map(({ label }) => label)) + 16);
	const wide = (plotWidth - left) / Math.max(1, columns.length);
	const height = room.top + rows.length * room.row;
	const marks = [
		plotText({
			text: 'denser hatching: fewer points earned; the bar is the 95 % interval; n: students',
			x: 4,
			y: 14,
			anchor: 'start',
			size: smallSize,
		}),
		...columns.map((text, column) =>
			plotText({ text, x: left + column * wide + 8, y: 36, anchor: 'start', size: smallSize }),
		),
		...rows.flatMap(({ label, cells }, row) => {
			const top = room.top + row * room.row;
			return [
				lineMark(0, top, plotWidth, top, 1, { stroke: rule }),
				plotText({ text: label, x: 4, y: top + room.row / 2 + 5, anchor: 'start' }),
				...cells.flatMap((cell, column) => drawCell(cell, left + column * wide, top, wide)),
			];
		}),
		lineMark(0, height, plotWidth, height, 1, { stroke: rule }),
	];
	return drawSheet(plotWidth, height + 8, marks);
}

function drawCell(cell: EvidenceSpot | null, x: number, top: number, wide: number): readonly MarkupElement[] {
	if (cell === null) return [lineMark(x + 8, top + room.row / 2, x + 20, top + room.row / 2, 1, { stroke: rule })];
	const { share, low, high, students, items } = cell;
	const counts = `${items} ${items === 1 ? 'item' : 'items'}`;
	if (share === undefined) {
		return [
			plotText({ text: 'hidden', x: x + 8, y: top + 24, anchor: 'start', size: labelSize }),
			plotText({ text: counts, x: x + 8, y: top + 48, anchor: 'start', size: smallSize }),
		];
	}
	const [boxTop, boxHeight] = [top + 8, room.row - 26];
	const [start, end] = [x + 8 + room.swatch + 8, x + wide - 10];
	const place = (value: number): number => start + value * (end - start);
	const line = top + 34;
	return [
		block(x + 8, boxTop, room.swatch, boxHeight),
		...(share > 0.98 ? [] : hatch(x + 8, boxTop, room.swatch, boxHeight, 3 / (1 - share))),
		plotText({ text: writeShare(share), x: start, y: top + 22, anchor: 'start' }),
		lineMark(start, line, end, line, 1),
		...[0, 0.5, 1].map((tick) => lineMark(place(tick), line - 3, place(tick), line + 3, 1)),
		...(low === undefined || high === undefined ? [] : [lineMark(place(low), line, place(high), line, 3.5)]),
		disc(place(share), line, 4),
		plotText({ text: `${counts}, n ${students ?? 0}`, x: x + 8, y: top + 52, anchor: 'start', size: smallSize }),
	];
}

/** What the board of evidence shows, in words, row by row. */
export function describeEvidenceBoard({ columns, rows }: EvidenceBoardPlot): string {
	const list = rows.map(({ label, cells }) => {
		const told = cells.flatMap((cell, column) => (cell === null ? [] : [`${columns[column] ?? ''} ${tellCell(cell)}`]));
		return `${label}: ${told.length === 0 ? 'nothing asked' : told.join('; ')}.`;
	});
	return `Points earned over points possible by standard and model. ${list.join(' ')}`;
}

function tellCell({ share, low, high, students, items }: EvidenceSpot): string {
	if (share === undefined) return 'hidden';
	const span = low === undefined || high === undefined ? '' : ` (${writeShare(low)} to ${writeShare(high)})`;
	return `${writeShare(share)}${span}, ${items} ${items === 1 ? 'item' : 'items'}, ${students ?? 0} students`;
}
