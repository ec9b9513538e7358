import { drawSheet, type FigureDrawing, lineMark } from '../figures/marks.ts';
import type { ScoresPlot } from '../types.ts';
import {
	type Axis,
	axisMarks,
	block,
	hatch,
	placeOn,
	plotText,
	plotWidth,
	roundSteps,
	rule,
	shape,
	smallSize,
	writeFigure,
} from './marks.ts';

const room = { left: 44, right: 20, top: 44, bottom: 58, height: 170 };

/** Scores as hatched bars over a line of points, each with its count of students on top, the mean as a pointer below. */
export function drawScores({ maximum, bars, mean, cuts = [] }: ScoresPlot): FigureDrawing {
	const y = room.top + room.height;
	const base: Axis = {
		from: -0.5,
		to: maximum + 0.5,
		start: room.left,
		end: plotWidth - room.right,
		y,
		ticks: roundSteps(0, maximum, 20),
		write: (value) => writeFigure(value),
	};
	// A bar over several scores is as high as its students for each score, so that areas compare.
	const heights = bars.map(({ from, to, count }) => count / (to - from + 1));
	const most = Math.max(1, ...heights);
	const up = (value: number): number => y - (value / most) * room.height;
	const marks = [
		...roundSteps(0, most, 4).flatMap((step) => [
			lineMark(room.left, up(step), plotWidth - room.right, up(step), 1, { stroke: rule }),
			plotText({ text: writeFigure(step), x: room.left - 8, y: up(step) + 4, anchor: 'end', size: smallSize }),
		]),
		...bars.flatMap(({ from, to, count }, index) => {
			if (count === 0) return [];
			const [left, right] = [placeOn(base, from - 0.5) + 1, placeOn(base, to + 0.5) - 1];
			const top = up(heights[index] ?? 0);
			return [
				block(left, top, right - left, y - top),
				...hatch(left, top, right - left, y - top, 6),
				plotText({ text: String(count), x: (left + right) / 2, y: top - 5, anchor: 'middle', size: smallSize }),
			];
		}),
		...cuts.flatMap(({ label, from }) => {
			const x = placeOn(base, from - 0.5);
			return [
				lineMark(x, room.top - 18, x, y, 1.25, { dash: '5 4' }),
				plotText({ text: label, x: x + 4, y: room.top - 22, anchor: 'start', size: smallSize }),
			];
		}),
		...axisMarks(base),
		...pointer(placeOn(base, mean), y + 24, `mean ${writeFigure(mean)}`),
		plotText({ text: 'students', x: 4, y: 14, anchor: 'start', size: smallSize }),
		plotText({ text: 'points', x: plotWidth - room.right, y: y + 46, anchor: 'end', size: smallSize }),
	];
	return drawSheet(plotWidth, y + room.bottom, marks);
}

/** A pointer from below to a place on an axis, with what it points out. */
function pointer(x: number, y: number, text: string) {
	return [
		shape([
			[x, y],
			[x - 6, y + 10],
			[x + 6, y + 10],
		]),
		plotText({ text, x, y: y + 24, anchor: 'middle', size: smallSize }),
	];
}

/** What the plot of scores shows, in words. */
export function describeScoresPlot({ maximum, students, mean, bars, cuts = [] }: ScoresPlot): string {
	const filled = bars.filter(({ count }) => count > 0);
	const list = filled.map(
		({ from, to, count }) => `${writeRange(from, to)}: ${count} ${count === 1 ? 'student' : 'students'}`,
	);
	const bands =
		cuts.length === 0 ? '' : ` Marked: ${cuts.map(({ label, from }) => `${label} from ${from}`).join(', ')}.`;
	return `Bars of total scores from 0 to ${writeFigure(maximum)} points, ${students} students, mean ${writeFigure(mean)}. Points and students: ${list.join('; ')}.${bands}`;
}

/** A range of scores as people write it. */
export function writeRange(from: number, to: number): string {
	return from === to ? writeFigure(from, 2) : `${writeFigure(from, 2)} to ${writeFigure(to, 2)}`;
}
