import type { MarkupElement } from '../markup/tree.ts';
import type { CounterGroupsFigure } from '../types.ts';
import { counterMarks, drawSheet, type FigureDrawing, frameMark } from './marks.ts';

const pitch = 36;
const margin = 10;
const padding = 8;
const gap = 14;
const widest = 640;
/** Counters in a row of a group: up to five are seen at a glance. */
const rowLength = 5;

/** Draws each group in its frame, the frames in rows as even as the count allows. The figure must pass checkFigure. */
export function drawCounterGroups(figure: CounterGroupsFigure): FigureDrawing {
	const columns = Math.min(figure.each, rowLength);
	const width = columns * pitch + 2 * padding;
	const height = Math.ceil(figure.each / rowLength) * pitch + 2 * padding;
	const { perRow, rows } = groupRows(figure);
	const marks: MarkupElement[] = [];
	for (let group = 0; group < figure.groups; group += 1) {
		const x = margin + (group % perRow) * (width + gap);
		const y = margin + Math.floor(group / perRow) * (height + gap);
		marks.push(frameMark({ x, y, width, height }, 14));
		for (let index = 0; index < figure.each; index += 1) {
			const cx = x + padding + (index % rowLength) * pitch + pitch / 2;
			const cy = y + padding + Math.floor(index / rowLength) * pitch + pitch / 2;
			marks.push(...counterMarks(figure.sign, cx, cy));
		}
	}
	return drawSheet(2 * margin + perRow * (width + gap) - gap, 2 * margin + rows * (height + gap) - gap, marks);
}

/** How the frames of a figure stand: how many in each row but the last, and how many rows. */
function groupRows(figure: CounterGroupsFigure): { readonly perRow: number; readonly rows: number } {
	const width = Math.min(figure.each, rowLength) * pitch + 2 * padding;
	const most = Math.min(5, Math.floor((widest - 2 * margin + gap) / (width + gap)));
	const rows = Math.ceil(figure.groups / most);
	return { perRow: Math.ceil(figure.groups / rows), rows };
}
