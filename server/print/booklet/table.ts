import type { TableBlock } from '../../../item-bank/types.ts';
import { type Box, stack, wrap } from '../page/box.ts';
import { type Block, black, type Mark } from '../page/marks.ts';
import { linesOf } from '../page/prose.ts';
import { layText, lineOf, richSpans } from '../page/text.ts';
import type { ItemRoom } from './stem.ts';

const cellPadding = 7;

/** A table as wide as its contents need, the page at most; numbers stand at the right of their column. */
export function layTable(block: TableBlock, room: ItemRoom): Box {
	const { type } = room.style;
	const style = linesOf(type, type.item);
	const rows = [block.header, ...block.rows];
	const widths = columnWidths(rows, room.width, type.item);
	const total = widths.reduce((sum, width) => sum + width, 0);
	const isNumeric = widths.map((_, column) => block.rows.every((row) => /^`[^`]*`$/.test(row[column] ?? '')));
	const laid = rows.map((row, index) =>
		row.map((text, column) =>
			layText(richSpans(text, index === 0 ? 'serif-bold' : 'serif'), (widths[column] ?? 0) - 2 * cellPadding, {
				...style,
				align: isNumeric[column] ? 'right' : 'left',
			}),
		),
	);
	const heights = laid.map((cells) => Math.max(...cells.map((cell) => cell.height)) + 5);
	const height = heights.reduce((sum, each) => sum + each, 0) + 6;
	const table: Box = {
		width: total,
		height,
		place(x, y) {
			let top = y + 3;
			const blocks = laid.map((cells, index): Block => {
				let left = x;
				const children = cells.map((cell, column): Block => {
					const placed = cell.place(left + cellPadding, top + 2.5);
					left += widths[column] ?? 0;
					if (index === 0) return { tag: 'TH', scope: 'Column', children: placed };
					return column === 0 && !isNumeric[0]
						? { tag: 'TH', scope: 'Row', children: placed }
						: { tag: 'TD', children: placed };
				});
				top += heights[index] ?? 0;
				return { tag: 'TR', children };
			});
			return [
				{ tag: 'Artifact', children: rules(x, y, total, heights) },
				{ tag: 'Table', children: blocks },
			];
		},
	};
	if (block.caption === undefined) return table;
	const caption = wrap(layText(richSpans(block.caption, 'serif-italic'), room.width, style), { tag: 'P' });
	return stack([caption, table], 2);
}

/** Hairlines above, below every row and at the end. */
function rules(x: number, y: number, width: number, heights: readonly number[]): readonly Mark[] {
	const total = heights.reduce((sum, each) => sum + each, 0);
	const line = (at: number, weight: number): Mark => ({
		kind: 'line',
		x1: x,
		y1: at,
		x2: x + width,
		y2: at,
		paint: { stroke: black, width: weight },
	});
	let at = y + 3;
	const between = heights.slice(0, -1).map((height, index) => {
		at += height;
		return line(at, index === 0 ? 1 : 0.35);
	});
	return [line(y + 3, 1), ...between, line(y + 3 + total, 1)];
}

/** Natural widths; when they do not fit, the wide columns share what the narrow ones leave. */
function columnWidths(rows: readonly (readonly string[])[], width: number, size: number): readonly number[] {
	const columns = rows[0]?.length ?? 0;
	const natural = Array.from({ length: columns }, (_, column) =>
		Math.max(
			...rows.map(
				(row, index) =>
					lineOf(richSpans(row[column] ?? '', index === 0 ? 'serif-bold' : 'serif'), size) + 2 * cellPadding + 1,
			),
		),
	);
	const total = natural.reduce((sum, each) => sum + each, 0);
	if (total <= width) return natural;
	const share = width / columns;
	const narrow = natural.filter((each) => each <= share);
	const rest = width - narrow.reduce((sum, each) => sum + each, 0);
	const wide = natural.filter((each) => each > share).reduce((sum, each) => sum + each, 0);
	return natural.map((each) => (each <= share ? each : (each * rest) / wide));
}
