import type { BubbleColumn } from '../../../item-bank/types.ts';
import { capHeight, textWidth } from '../page/fonts.ts';
import { black, fromMm, type Mark, type Paint } from '../page/marks.ts';

/** Thickness of outlines, points. It lies inside the diameter. */
const outline = 0.9;
const line: Paint = { stroke: black, width: outline };

/** How bubbles are drawn: diameter in millimetres, size of the letter inside in points. */
export interface BubbleStyle {
	readonly bubble: number;
	readonly symbolSize: number;
}

/** A bubble with what it stands for, filled when told so; `x`, `y` is its centre in millimetres. */
export function drawBubble(
	x: number,
	y: number,
	symbol: string,
	style: BubbleStyle,
	isFilled = false,
): readonly Mark[] {
	const [cx, cy] = [fromMm(x), fromMm(y)];
	const radius = fromMm(style.bubble) / 2 - outline / 2;
	if (isFilled)
		return [{ kind: 'circle', x: cx, y: cy, radius, paint: { fill: black, stroke: black, width: outline } }];
	return [{ kind: 'circle', x: cx, y: cy, radius, paint: line }, ...drawSymbol(symbol, cx, cy, style.symbolSize)];
}

/** Signs are drawn as bars, so that they stand in the very middle; letters and digits are text. */
function drawSymbol(symbol: string, x: number, y: number, size: number): readonly Mark[] {
	if (symbol === '-' || symbol === '+') {
		const half = size * 0.3;
		const paint: Paint = { stroke: black, width: Math.max(1, size * 0.13) };
		const across: Mark = { kind: 'line', x1: x - half, y1: y, x2: x + half, y2: y, paint };
		if (symbol === '-') return [across];
		return [across, { kind: 'line', x1: x, y1: y - half, x2: x, y2: y + half, paint }];
	}
	const text = symbol.toUpperCase();
	const left = x - textWidth(text, 'sans', size) / 2;
	return [{ kind: 'text', x: left, y: y + (capHeight * size) / 2, text, font: 'sans', size }];
}

/** What is written in the box and filled below it, column by column. */
export type Filled = readonly (readonly string[])[];

/** Columns of boxes and bubbles; `filled` holds what is marked in each, nothing when left out. */
export function drawColumns(
	columns: readonly BubbleColumn[],
	style: BubbleStyle & { readonly writingSize?: number },
	filled: Filled = [],
): readonly Mark[] {
	return columns.flatMap(({ box, bubbles }, column) => {
		const marked = filled[column] ?? [];
		const frame: readonly Mark[] = box
			? [
					{
						kind: 'rect',
						x: fromMm(box.x),
						y: fromMm(box.y),
						width: fromMm(box.width),
						height: fromMm(box.height),
						paint: line,
					},
				]
			: [];
		const written = box && marked[0] !== undefined ? drawWritten(marked[0], box, style.writingSize ?? 14) : [];
		return [
			...frame,
			...written,
			...bubbles.flatMap(({ symbol, x, y }) => drawBubble(x, y, symbol, style, marked.includes(symbol))),
		];
	});
}

function drawWritten(symbol: string, box: NonNullable<BubbleColumn['box']>, size: number): readonly Mark[] {
	const text = symbol === '-' ? '−' : symbol;
	const x = fromMm(box.x + box.width / 2) - textWidth(text, 'serif-italic', size) / 2;
	const y = fromMm(box.y + box.height / 2) + (capHeight * size) / 2;
	return [{ kind: 'text', x, y, text, font: 'serif-italic', size }];
}
