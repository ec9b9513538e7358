import type { ReportTable } from '../../../item-bank/types.ts';
import { type Box, pad } from '../page/box.ts';
import { textWidth } from '../page/fonts.ts';
import { type Block, black, grey, type Mark } from '../page/marks.ts';
import { linesOf, type ProseRoom } from '../page/prose.ts';
import { layText } from '../page/text.ts';

const cellPadding = 3;
/** Below a table, points. */
const below = 4;

/** A table of a report, laid out once and cut into pieces of whole rows, each with the headings again. */
export interface LaidTable {
	readonly width: number;
	readonly rows: number;
	/** Height of a piece from a row up to another, that one left out. */
	readonly heightOf: (from: number, to: number) => number;
	readonly piece: (from: number, to: number) => Box;
}

/** Lays out a table of a report in a room; it takes no more width than it needs. */
export function layReportTable({ headings, rows }: ReportTable, room: ProseRoom): LaidTable {
	const digits = headings.map((_unused, column) => decimalsOfColumn(rows.map((row) => row[column] ?? null)));
	const texts = rows.map((row) => headings.map((_unused, column) => cellText(row[column] ?? null, digits[column])));
	const isNumeric = headings.map((_unused, column) =>
		texts.every((row) => /^[−-]?[\d.]*( %)?$|^–$|^hidden$/.test(row[column] ?? '')),
	);
	const widths = columnWidths([headings, ...texts], room);
	const style = linesOf(room.type, room.type.small);
	const laid = [headings, ...texts].map((row, index) =>
		row.map((text, column) =>
			layText([{ text, font: index === 0 ? 'sans-bold' : 'sans' }], (widths[column] ?? 0) - 2 * cellPadding, {
				...style,
				align: isNumeric[column] ? 'right' : 'left',
			}),
		),
	);
	const heights = laid.map((cells) => Math.max(style.leading, ...cells.map(({ height }) => height)) + 4);
	const heightOf = (from: number, to: number): number =>
		below + [heights[0] ?? 0, ...heights.slice(from + 1, to + 1)].reduce((sum, each) => sum + each, 0);
	return {
		width: widths.reduce((sum, each) => sum + each, 0),
		rows: rows.length,
		heightOf,
		piece: (from, to) => {
			const shown = [0, ...Array.from({ length: to - from }, (_unused, row) => from + row + 1)];
			return layPiece(
				shown.map((row) => laid[row] ?? []),
				shown.map((row) => heights[row] ?? 0),
				widths,
			);
		},
	};
}

/** Decimals of a column of numbers, as many as the one with most; undefined where words stand in it too. */
function decimalsOfColumn(cells: readonly (string | number | null)[]): number | undefined {
	if (cells.some((cell) => typeof cell === 'string' && cell !== 'hidden')) return undefined;
	return Math.max(0, ...cells.map((cell) => String(cell ?? '').split('.')[1]?.length ?? 0));
}

function cellText(cell: string | number | null, digits: number | undefined): string {
	if (cell === null) return '–';
	if (typeof cell === 'string') return cell;
	return (digits === undefined ? String(cell) : cell.toFixed(digits)).replace('-', '−');
}

function layPiece(laid: readonly (readonly Box[])[], heights: readonly number[], widths: readonly number[]): Box {
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
	return pad(box, { bottom: below });
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
	return spread(least, natural, width);
}

/** Room beyond the least goes out evenly until a column has what it wishes, so that short columns never wrap for the sake of long ones; those that lack room share what is left, more to those with more text. */
function spread(least: readonly number[], natural: readonly number[], width: number): readonly number[] {
	const widths = [...least];
	let spare = width - widths.reduce((sum, each) => sum + each, 0);
	for (;;) {
		const open = widths.flatMap((each, column) => ((natural[column] ?? 0) - each > 0.01 ? [column] : []));
		if (open.length === 0) return widths;
		if (spare < 0.01) return shareOut(open, widths, { least, natural });
		const share = spare / open.length;
		for (const column of open) {
			const more = Math.min(share, (natural[column] ?? 0) - (widths[column] ?? 0));
			widths[column] = (widths[column] ?? 0) + more;
			spare -= more;
		}
	}
}

/** The room of some columns dealt out anew by the square root of their longest text, none below its longest word: long texts get more, and short ones do not become towers. */
function shareOut(
	open: readonly number[],
	widths: readonly number[],
	{ least, natural }: { readonly least: readonly number[]; readonly natural: readonly number[] },
): readonly number[] {
	const total = (list: readonly number[], columns: readonly number[]): number =>
		columns.reduce((sum, column) => sum + (list[column] ?? 0), 0);
	const weights = natural.map(Math.sqrt);
	const room = total(widths, open);
	// Columns that a fair share would cut below their longest word keep that word; the others share the rest.
	let sharing = open;
	for (;;) {
		const tight = open.filter((column) => !sharing.includes(column));
		const left = room - total(least, tight);
		const share = (column: number): number => (left * (weights[column] ?? 0)) / total(weights, sharing);
		const cut = sharing.filter((column) => share(column) < (least[column] ?? 0));
		if (cut.length === 0) {
			return widths.map((width, column) => {
				if (sharing.includes(column)) return share(column);
				return tight.includes(column) ? (least[column] ?? 0) : width;
			});
		}
		sharing = sharing.filter((column) => !cut.includes(column));
	}
}
