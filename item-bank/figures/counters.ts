import type { MarkupElement } from '../markup/tree.ts';
import type { CounterSign, CountersFigure } from '../types.ts';
import { counterMarks, counterSize, crossedCounterMarks, drawSheet, type FigureDrawing, frameMark } from './marks.ts';

const pitch = 42;
const rowPitch = 38;
const blockPitch = 2 * rowPitch + 16;
const margin = 10;
const framePadding = 8;
const apart = 22;
/** Most columns in one row; sets with more stand in rows of ten, which are easier to count than one long row. */
const longestRow = 12;

/** Counters that stand together: plus above minus, in one block or in blocks of ten columns. */
export interface CounterSet {
	readonly plus: number;
	readonly minus: number;
	readonly crossedPlus: number;
	readonly crossedMinus: number;
}

/** The starting set and the added pairs, with the crossed-out counters shared among them: the starting set's first. */
export function splitCounters(figure: CountersFigure): { readonly starting: CounterSet; readonly added: CounterSet } {
	const pairs = figure.addedPairs ?? 0;
	const crossed = (sign: CounterSign) => (figure.removed?.sign === sign ? figure.removed.count : 0);
	const share = (sign: CounterSign, count: number): readonly [number, number] => {
		const inStarting = Math.min(crossed(sign), count);
		return [inStarting, crossed(sign) - inStarting];
	};
	const [startingPlus, addedPlus] = share('plus', figure.plus);
	const [startingMinus, addedMinus] = share('minus', figure.minus);
	return {
		starting: { plus: figure.plus, minus: figure.minus, crossedPlus: startingPlus, crossedMinus: startingMinus },
		added: { plus: pairs, minus: pairs, crossedPlus: addedPlus, crossedMinus: addedMinus },
	};
}

/** Columns in each row of a set: all of them up to twelve, ten beyond. */
export function columnsOf(set: CounterSet): number {
	const columns = Math.max(set.plus, set.minus);
	return columns > longestRow ? 10 : columns;
}

/** Blocks of a set: a plus row above a minus row in each. */
export function blocksOf(set: CounterSet): number {
	return columnsOf(set) === 0 ? 0 : Math.ceil(Math.max(set.plus, set.minus) / columnsOf(set));
}

/** Draws counters. The figure must pass checkFigure. */
export function drawCounters(figure: CountersFigure): FigureDrawing {
	const { starting, added } = splitCounters(figure);
	const beside = columnsOf(starting) + columnsOf(added) <= longestRow && blocksOf(starting) <= 1;
	const inset = added.plus > 0 ? framePadding : 0;
	const marks = drawSet(starting, margin, margin + inset, figure.ringedPairs ?? 0);
	const size = sizeOf(starting);
	if (added.plus === 0) return drawSheet(size.width + 2 * margin, size.height + 2 * margin, marks);

	const hasStarting = size.width > 0;
	const left = margin + (beside && hasStarting ? size.width + apart : 0);
	const top = margin + (beside || !hasStarting ? 0 : size.height + inset + apart);
	const inner = sizeOf(added);
	const frame = { x: left, y: top, width: inner.width + 2 * framePadding, height: inner.height + 2 * framePadding };
	marks.push(frameMark(frame, 10, '6 4'), ...drawSet(added, left + framePadding, top + framePadding, 0));
	const width = Math.max(margin + size.width, left + frame.width) + margin;
	const height = Math.max(margin + inset + size.height, top + frame.height) + margin;
	return drawSheet(width, height, marks);
}

/** Room around a counter is half the gap between counters, so that rings fit on the outermost ones. */
function sizeOf(set: CounterSet): { readonly width: number; readonly height: number } {
	const blocks = blocksOf(set);
	if (blocks === 0) return { width: 0, height: 0 };
	const rows = set.plus > 0 && set.minus > 0 ? 2 : 1;
	const step = rows === 2 ? blockPitch : rowPitch;
	return { width: columnsOf(set) * pitch, height: (blocks - 1) * step + rows * rowPitch + 6 };
}

function drawSet(set: CounterSet, left: number, top: number, ringed: number): MarkupElement[] {
	const marks: MarkupElement[] = [];
	const bothRows = set.plus > 0 && set.minus > 0;
	const columns = columnsOf(set);
	const step = bothRows ? blockPitch : rowPitch;
	const place = (sign: CounterSign, index: number): readonly [number, number] => {
		const row = sign === 'minus' && bothRows ? 1 : 0;
		const x = left + (index % columns) * pitch + pitch / 2;
		return [x, top + 3 + Math.floor(index / columns) * step + row * rowPitch + rowPitch / 2];
	};
	for (let index = 0; index < ringed; index += 1) {
		const [x, y] = place('plus', index);
		const width = counterSize + 10;
		const ring = { x: x - width / 2, y: y - width / 2, width, height: rowPitch + width };
		marks.push(frameMark(ring, width / 2));
	}
	const rows = [
		['plus', set.plus, set.crossedPlus],
		['minus', set.minus, set.crossedMinus],
	] as const;
	for (const [sign, count, crossed] of rows) {
		for (let index = 0; index < count; index += 1) {
			const [x, y] = place(sign, index);
			marks.push(...(index >= count - crossed ? crossedCounterMarks(sign, x, y) : counterMarks(sign, x, y)));
		}
	}
	return marks;
}
