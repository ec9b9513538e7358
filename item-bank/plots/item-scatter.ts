import { drawSheet, type FigureDrawing, lineMark } from '../figures/marks.ts';
import type { MarkupElement } from '../markup/tree.ts';
import type { ItemScatterPlot } from '../types.ts';
import {
	type Axis,
	axisMarks,
	disc,
	placeOn,
	plotText,
	plotWidth,
	roundSteps,
	rule,
	smallSize,
	writeFigure,
	writeShare,
} from './marks.ts';
import { sansWidth } from './text-width.ts';

const room = { left: 56, right: 20, top: 34, bottom: 48, height: 250 };
const radius = 4.5;
/** Where figures ask for a look: see analysis/readings. */
const bounds = { hard: 0.3, easy: 0.9, together: 0.2 };

/** Items as discs: to the right the easier, up the better they go with the rest. A ring instead of a disc asks for a look. */
export function drawItemScatter({ items }: ItemScatterPlot): FigureDrawing {
	const low = Math.min(0, ...items.map(({ correlation }) => Math.floor(correlation * 5) / 5));
	const high = Math.max(0.6, ...items.map(({ correlation }) => Math.ceil(correlation * 5) / 5));
	const y = room.top + room.height;
	const across: Axis = {
		from: 0,
		to: 1,
		start: room.left,
		end: plotWidth - room.right,
		y,
		ticks: roundSteps(0, 1, 10),
		write: writeShare,
	};
	const up = (value: number): number => y - ((value - low) / (high - low)) * room.height;
	const places = items.map((item) => ({ ...item, x: placeOn(across, item.share), y: up(item.correlation) }));
	const marks = [
		...roundSteps(low, high, 6).flatMap((step) => [
			lineMark(room.left, up(step), across.end, up(step), 1, { stroke: rule }),
			plotText({ text: writeFigure(step), x: room.left - 8, y: up(step) + 4, anchor: 'end', size: smallSize }),
		]),
		...[bounds.hard, bounds.easy].map((share) => {
			const x = placeOn(across, share);
			return lineMark(x, room.top, x, y, 1.25, { dash: '5 4' });
		}),
		lineMark(room.left, up(bounds.together), across.end, up(bounds.together), 1.25, { dash: '5 4' }),
		...axisMarks(across),
		...labelPlaces(places),
		...places.map((item) => disc(item.x, item.y, radius, !item.look)),
		plotText({ text: 'correlation with the rest', x: 4, y: 16, anchor: 'start', size: smallSize }),
		plotText({
			text: 'ring: worth a look; dashed: the usual bounds',
			x: across.end,
			y: 16,
			anchor: 'end',
			size: smallSize,
		}),
		plotText({
			text: 'share of points earned: easier to the right',
			x: across.end,
			y: y + 38,
			anchor: 'end',
			size: smallSize,
		}),
	];
	return drawSheet(plotWidth, y + room.bottom, marks);
}

interface Spot {
	readonly label: string;
	readonly x: number;
	readonly y: number;
}

/** Labels beside their discs, on the first of eight sides where they touch neither a disc nor another label. */
function labelPlaces(spots: readonly Spot[]): readonly MarkupElement[] {
	const taken = spots.map(({ x, y }) => ({ left: x - radius, right: x + radius, top: y - radius, bottom: y + radius }));
	return spots.map(({ label, x, y }) => {
		const width = sansWidth(label, smallSize);
		const sides = [
			[radius + 3, 4],
			[-radius - 3 - width, 4],
			[-width / 2, -radius - 4],
			[-width / 2, radius + 12],
			[radius + 1, -radius],
			[-radius - 1 - width, -radius],
			[radius + 1, radius + 9],
			[-radius - 1 - width, radius + 9],
		] as const;
		const boxes = sides.map(([right, down]) => ({
			left: x + right,
			right: x + right + width,
			top: y + down - 9,
			bottom: y + down + 1,
		}));
		const free = boxes.find((box) =>
			taken.every(
				(other) => box.right < other.left || box.left > other.right || box.bottom < other.top || box.top > other.bottom,
			),
		);
		const box = free ?? (boxes[0] as (typeof boxes)[number]);
		taken.push(box);
		return plotText({ text: label, x: box.left, y: box.bottom - 1, anchor: 'start', size: smallSize });
	});
}

/** What the plot of items shows, in words. */
export function describeItemScatter({ items }: ItemScatterPlot): string {
	const list = items.map(
		({ label, share, correlation, look }) =>
			`${label} ${writeShare(share)}, ${writeFigure(correlation, 2)}${look ? ' (worth a look)' : ''}`,
	);
	return `Each item by the share of points earned and its correlation with the rest. ${list.join('; ')}.`;
}
