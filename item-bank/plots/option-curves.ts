import { drawSheet, type FigureDrawing, lineMark, paper, roundPx } from '../figures/marks.ts';
import { element, type MarkupElement } from '../markup/tree.ts';
import type { OptionCurvesPlot } from '../types.ts';
import { disc, plotText, plotWidth, rule, smallSize, spread, writeShare } from './marks.ts';
import { sansWidth } from './text-width.ts';

type Panel = OptionCurvesPlot['panels'][number];

const perRow = 4;
const panelWidth = plotWidth / perRow;
const room = { left: 30, right: 16, top: 32, bottom: 34, height: 104 };
const panelHeight = room.top + room.height + room.bottom;
/** Dashes of the lines beside the key, one after the other. */
const dashes = ['6 4', '2 3', '9 3 2 3', '1 5', '12 4'];

/** A small plot an item: lines of options over score groups, the key thick with discs, every line named where it is highest. */
export function drawOptionCurves({ panels }: OptionCurvesPlot): FigureDrawing {
	const rows = Math.ceil(panels.length / perRow);
	const marks = panels.flatMap((panel, index) =>
		drawPanel(panel, (index % perRow) * panelWidth, Math.floor(index / perRow) * panelHeight),
	);
	const note = plotText({
		text: 'up: share that marked it; from left to right: score groups, lowest first; thick: the key',
		x: 4,
		y: rows * panelHeight + 14,
		anchor: 'start',
		size: smallSize,
	});
	return drawSheet(plotWidth, rows * panelHeight + 22, [...marks, note]);
}

function drawPanel({ label, groups, lines }: Panel, x: number, y: number): readonly MarkupElement[] {
	const [left, right] = [x + room.left, x + panelWidth - room.right];
	const base = y + room.top + room.height;
	const across = (group: number): number =>
		left + 14 + (groups.length < 2 ? 0 : (group / (groups.length - 1)) * (right - left - 28));
	const up = (share: number): number => base - share * room.height;
	let dash = -1;
	return [
		plotText({ text: `place ${label}`, x: left, y: y + 14, anchor: 'start' }),
		...[0, 0.5, 1].flatMap((share) => [
			lineMark(left, up(share), right, up(share), 1, { stroke: rule }),
			plotText({ text: String(share * 100), x: left - 5, y: up(share) + 4, anchor: 'end', size: smallSize }),
		]),
		...lines.flatMap((line) => {
			if (!line.key) dash += 1;
			const style = line.key ? {} : { dash: dashes[dash % dashes.length] ?? '6 4' };
			const strokes = line.shares
				.slice(1)
				.map((share, group) =>
					lineMark(
						across(group),
						up(line.shares[group] ?? 0),
						across(group + 1),
						up(share),
						line.key ? 2.5 : 1.5,
						style,
					),
				);
			const discs = line.key ? line.shares.map((share, group) => disc(across(group), up(share), 3)) : [];
			return [...strokes, ...discs];
		}),
		...nameLines(lines, across, up, y + room.top + 2),
		...groups.map((_unused, group) => lineMark(across(group), base, across(group), base + 4, 1.25)),
		lineMark(left, base, right, base, 1.5),
	];
}

/** Every line named where it is highest, on a patch of paper; names at the same group are moved apart. */
function nameLines(
	lines: Panel['lines'],
	across: (group: number) => number,
	up: (share: number) => number,
	top: number,
): readonly MarkupElement[] {
	const named = lines.map(({ label, shares }) => {
		const group = shares.indexOf(Math.max(...shares));
		return { text: label, group, y: up(shares[group] ?? 0) - 6 };
	});
	return [...new Set(named.map(({ group }) => group))].flatMap((group) => {
		const here = named.filter((one) => one.group === group);
		const places = spread(
			here.map(({ y }) => y),
			12,
			top - 6,
			up(0) - 3,
		);
		return here.flatMap(({ text }, index) => {
			const [x, y, width] = [across(group), places[index] ?? 0, sansWidth(text, smallSize)];
			return [
				element('rect', {
					x: roundPx(x - width / 2 - 1),
					y: roundPx(y - 9),
					width: roundPx(width + 2),
					height: 10,
					fill: paper,
				}),
				plotText({ text, x, y, anchor: 'middle', size: smallSize }),
			];
		});
	});
}

/** What the option curves show, in words. */
export function describeOptionCurves({ panels }: OptionCurvesPlot): string {
	const list = panels.map(({ label, groups, lines }) => {
		const told = lines.map(
			({ label: option, key, shares }) => `${option}${key ? ' (key)' : ''} ${shares.map(writeShare).join(', ')}`,
		);
		return `Place ${label}, ${groups.length} groups: ${told.join('; ')}.`;
	});
	return `Share of each score group, lowest scores first, that marked each option. ${list.join(' ')}`;
}
