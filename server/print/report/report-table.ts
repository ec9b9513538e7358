import type { ReportTable } from '../../../item-bank/types.ts';
import { type Box, pad } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, grey, type Mark } from '../page/marks.ts';
import { linesOf, type ProseRoom } from '../page/prose.ts';
import { layText } from '../page/text.ts';

const cellPadding = 3;
/** Rows that stay together: pieces of a table are dealt out to pages whole, each with the headings. */
const rowsTogether = 12;

/** A table of a report in pieces, each as wide as the page and with the headings again. */
export function layReportTable({ headings, rows }: ReportTable, room: ProseRoom): readonly Box[] {
	const texts = rows.map((row) => headings.map((_unused, column) => cellText(row[column] ?? null)));
	const isNumeric = headings.map((_unused, column) =>
		texts.every((row) => /^[−-]?[\d.]*( %)?$|^–$/.test(row[column] ?? '')),
	);
	const widths = columnWidths([headings, ...texts], room);
	const pieces: Box[] = [];
	for (let from = 0; from === 0 || from < texts.length; from += rowsTogether) {
		pieces.push(layPiece(headings, texts.slice(from, from + rowsTogether), widths, isNumeric, room));
	}
	return pieces;
}

function cellText(cell: string | number | null): string {
	if (cell === null) return '–';
	return typeof cell === 'number' ? String(cell).replace('-', '−') : cell;
}

function layPiece(
	headings: readonly string[],
	rows: readonly (readonly string[])[],
	widths: readonly number[],
	isNumeric: readonly boolean[],
	{ type }: ProseRoom,
): Box {
	const style = linesOf(type, type.small);
	const laid = [headings, ...rows].map((row, index) =>
		row.map((text, column) =>
			layText([{ text, font: index === 0 ? 'sans-bold' : 'sans' }], (widths[column] ?? 0) - 2 * cellPadding, {
				...style,
				align: isNumeric[column] ? 'right' : 'left',
			}),
		),
	);
	const heights = laid.map((cells) => Math.max(style.leading, ...cells.map(({ height }) => height)) + 4);
	const width = widths.reduce((sum, each) => sum + each, 0);
	const height = heights.reduce((sum, each) => sum + each, 0);
	const box: Box = {
		width,
		height,
		place(x, y) {
			let top = y;
			const lines: Mark[] = [ruleAt(x, y, width, 0.8, black)];
			const blocks = laid.map((cells, index): Block => {
				let left = x;
				const children = cells.map((cell, column): Block => {
					const placed = cell.place(left + cellPadding, top + 2);
					left += widths[column] ?? 0;
					if (index === 0) return { tag: 'TH', scope: 'Column', children: placed };
					return column === 0 ? { tag: 'TH', scope: 'Row', children: placed } : { tag: 'TD', children: placed };
				});
				top += heights[index] ?? 0;
				const isEdge = index === 0 || index === laid.length - 1;
				lines.push(ruleAt(x, top, width, isEdge ? 0.8 : 0.25, isEdge ? black : grey));
				return { tag: 'TR', children };
			});
			return [
				{ tag: 'Artifact', children: lines },
				{ tag: 'Table', children: blocks },
			];
		},
	};
	return pad(box, { bottom: 4 });
}

function ruleAt(x: number, y: number, width: number, weight: number, stroke: string): Mark {
	return { kind: 'line', x1: x, y1: y, x2: x + width, y2: y, paint: { stroke, width: weight } };
}

/** Every column has room for its longest word where the page allows, and the rest goes to those with most text. */
function columnWidths(rows: readonly (readonly string[])[], { width, type }: ProseRoom): readonly number[] {
	const columns = rows[0]?.length ?? 0;
	const measure = (text: string, index: number): number =>
		textWidth(text, index === 0 ? 'sans-bold' : 'sans', type.small) + 2 * cellPadding + 1;
	const least: number[] = [];
	const natural: number[] = [];
	for (let column = 0; column < columns; column += 1) {
		const words = rows.map((row, index) => (row[column] ?? '').split(' ').map((word) => measure(word, index)));
		least.push(Math.max(...words.map((each) => Math.max(...each))));
		natural.push(Math.max(...rows.map((row, index) => measure(row[column] ?? '', index))));
	}
	const sum = (list: readonly number[]): number => list.reduce((all, each) => all + each, 0);
	if (sum(natural) <= width) return natural;
	if (sum(least) >= width) return least.map((each) => (each * width) / sum(least));
	const spare = width - sum(least);
	const wish = natural.map((each, column) => each - (least[column] ?? 0));
	return least.map((each, column) => each + (spare * (wish[column] ?? 0)) / sum(wish));
}
