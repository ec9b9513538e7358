import { drawSheet, type FigureDrawing, lineMark } from '../figures/marks.ts';
import type { ItemPersonPlot } from '../types.ts';
import {
	type Axis,
	axisMarks,
	block,
	disc,
	hatch,
	placeOn,
	plotText,
	plotWidth,
	roundSteps,
	smallSize,
	writeFigure,
} from './marks.ts';
import { sansWidth } from './text-width.ts';

const room = { left: 20, right: 20, top: 40, up: 130, row: 22 };

/** Students as bars above a line of logits, items hanging below it at their difficulties, each with two standard errors either way. */
export function drawItemPerson(plot: ItemPersonPlot): FigureDrawing {
	const { items, students } = plot;
	const [from, to] = rangeOf(plot);
	const y = room.top + room.up;
	const axis: Axis = {
		from,
		to,
		start: room.left,
		end: plotWidth - room.right,
		y,
		ticks: roundSteps(from, to, 10),
		write: (value) => writeFigure(value),
	};
	const heights = students.map((bar) => bar.count / Math.max(bar.to - bar.from, 1e-9));
	const most = Math.max(...heights, 1e-9);
	const bars = students.flatMap((bar, index) => {
		if (bar.count === 0) return [];
		const [left, right] = [placeOn(axis, bar.from) + 1, placeOn(axis, bar.to) - 1];
		const high = ((heights[index] ?? 0) / most) * (room.up - 20);
		return [
			block(left, y - high, right - left, high),
			...hatch(left, y - high, right - left, high, 6),
			plotText({ text: String(bar.count), x: (left + right) / 2, y: y - high - 5, anchor: 'middle', size: smallSize }),
		];
	});
	const rows = hangItems(plot, axis);
	const below = y + 34;
	const hung = rows.flatMap(({ label, at, error, row }) => {
		const [x, line] = [placeOn(axis, at), below + row * room.row];
		const [low, high] = [-2, 2].map((errors) => clampTo(axis, placeOn(axis, at + errors * error)));
		return [
			lineMark(low ?? x, line, high ?? x, line, 1.5),
			disc(x, line, 3.5),
			plotText({ text: label, x: (high ?? x) + 5, y: line + 4, anchor: 'start', size: smallSize }),
		];
	});
	const depth = below + (Math.max(0, ...rows.map(({ row }) => row)) + 1) * room.row;
	return drawSheet(plotWidth, depth + 24, [
		...bars,
		...axisMarks(axis),
		...hung,
		plotText({ text: 'students: each bar with their number', x: 4, y: 16, anchor: 'start', size: smallSize }),
		plotText({
			text: 'items by place, two standard errors either way',
			x: 4,
			y: depth + 12,
			anchor: 'start',
			size: smallSize,
		}),
		plotText({
			text: items.length === 0 ? '' : 'to the right: harder items, higher scores',
			x: plotWidth - 4,
			y: depth + 12,
			anchor: 'end',
			size: smallSize,
		}),
	]);
}

function rangeOf({ items, students }: ItemPersonPlot): readonly [number, number] {
	const marks = [...items.map(({ at }) => at), ...students.flatMap(({ from, to }) => [from, to])];
	if (marks.length === 0) return [-1, 1];
	return [Math.floor(Math.min(...marks) - 0.25), Math.ceil(Math.max(...marks) + 0.25)];
}

function clampTo({ start, end }: Axis, x: number): number {
	return Math.max(start, Math.min(end, x));
}

/** Items from the easiest up, each in the first row where it touches none before it. */
function hangItems({ items }: ItemPersonPlot, axis: Axis) {
	const ends: number[] = [];
	return [...items]
		.sort((a, b) => a.at - b.at)
		.map((item) => {
			const left = clampTo(axis, placeOn(axis, item.at - 2 * item.error));
			const right = clampTo(axis, placeOn(axis, item.at + 2 * item.error)) + 10 + sansWidth(item.label, smallSize);
			const free = ends.findIndex((end) => end < left - 4);
			const row = free < 0 ? ends.length : free;
			ends[row] = right;
			return { ...item, row };
		});
}

/** What the item-person map shows, in words. */
export function describeItemPerson({ items, students }: ItemPersonPlot): string {
	const ordered = [...items].sort((a, b) => a.at - b.at);
	const places = ordered.map(({ label, at }) => `${label} at ${writeFigure(at)}`).join(', ');
	const bars = students
		.filter(({ count }) => count > 0)
		.map(({ from, to, count }) => `${count} from ${writeFigure(from)} to ${writeFigure(to)}`)
		.join(', ');
	return `One scale in logits. Students above it: ${bars === '' ? 'none' : bars}. Items below it, easiest first: ${places === '' ? 'none' : places}.`;
}
