import type { MarkupElement } from '../markup/tree.ts';
import { element } from '../markup/tree.ts';
import type { NumberLineFigure } from '../types.ts';
import {
	clearingMark,
	drawSheet,
	type FigureDrawing,
	ink,
	type Label,
	lineMark,
	polygonMark,
	roundPx,
	textMark,
	textSize,
	writeNumber,
} from './marks.ts';
import { layScale, type NumberLineScale, offsetOf } from './number-line-scale.ts';
import { arrowStops } from './number-line-window.ts';
import { capHeight, textWidth } from './text-width.ts';

const margin = 10;
const overhang = 20;
const tick = 6;
const zeroTick = 11;
const pointRadius = 6;
const headLength = 11;
const headHalf = 6;
const labelGap = 7;
const letterHeight = capHeight * textSize;

/** Turns px along and away from the line (toward the arrows) into px on the sheet. */
type Place = (along: number, away: number) => readonly [number, number];

/** What an arrow is called on the figure: its length with its sign. */
export function writeArrowLabel(length: number): string {
	return length > 0 ? `+${length}` : writeNumber(length);
}

/** Draws a number line with its arrows and points. The figure must pass checkFigure. */
export function drawNumberLine(figure: NumberLineFigure): FigureDrawing {
	const scale = layScale(figure);
	const isFlat = scale.orientation === 'horizontal';
	const length = scale.spacing * (scale.ticks.length - 1);
	const arrows = figure.arrows ?? [];
	const widest = Math.max(0, ...scale.labelled.map((value) => textWidth(writeNumber(value), textSize)));
	const behind = scale.labelled.length === 0 ? zeroTick : zeroTick + labelGap + (isFlat ? letterHeight : widest);
	const levels = levelsOf(figure, isFlat);
	const beyond = levels.at(-1) ?? (figure.points?.some((point) => point.label) ? 31 : zeroTick);
	const labelRoom = arrows.length > 0 ? arrowLabelRoom(figure, isFlat) : 0;
	const across = behind + beyond + labelRoom + 2 * margin;
	const along = length + 2 * (overhang + margin);
	const place: Place = isFlat
		? (a, away) => [margin + overhang + a, margin + labelRoom + beyond - away]
		: (a, away) => [margin + behind + away, along - margin - overhang - a];
	const marks = [
		...axisMarks(scale, place, length),
		...arrowMarks(figure, scale, place, levels),
		...pointMarks(figure, scale, place),
	];
	return isFlat ? drawSheet(along, across, marks) : drawSheet(across, along, marks);
}

/** How far from the line each arrow runs, px. */
function levelsOf(figure: NumberLineFigure, isFlat: boolean): readonly number[] {
	const nearest = figure.points?.some((point) => point.label) ? 46 : 26;
	const step = 20 + arrowLabelRoom(figure, isFlat);
	return (figure.arrows ?? []).map((_, index) => nearest + index * step);
}

function arrowLabelRoom(figure: NumberLineFigure, isFlat: boolean): number {
	if (!figure.arrowLabels) return headHalf;
	const widest = Math.max(...(figure.arrows ?? [0]).map((length) => textWidth(writeArrowLabel(length), textSize)));
	return headHalf + 3 + (isFlat ? letterHeight : widest);
}

function axisMarks(scale: NumberLineScale, place: Place, length: number): readonly MarkupElement[] {
	const marks = [
		straight(place, [-overhang + 6, 0], [length + overhang - 6, 0], 1.5),
		head(place, length + overhang, 0, 1, 9, 4.5),
		head(place, -overhang, 0, -1, 9, 4.5),
	];
	for (const value of scale.ticks) {
		const at = offsetOf(scale, value);
		// An unlabelled zero keeps a plain tick: to find it may be the task, and the description does not name it either.
		const isLong = value === 0 && scale.labelled.includes(0);
		const reach = isLong ? zeroTick : tick;
		marks.push(straight(place, [at, -reach], [at, reach], isLong ? 2 : 1.25));
	}
	for (const value of scale.labelled) marks.push(textMark(tickLabel(scale, place, value)));
	return marks;
}

function tickLabel(scale: NumberLineScale, place: Place, value: number): Label {
	const [x, y] = place(offsetOf(scale, value), -zeroTick - labelGap);
	const text = writeNumber(value);
	if (scale.orientation === 'vertical') return { text, x, y: y + letterHeight / 2, anchor: 'end' };
	return { text, x, y: y + letterHeight, anchor: 'middle' };
}

function arrowMarks(
	figure: NumberLineFigure,
	scale: NumberLineScale,
	place: Place,
	levels: readonly number[],
): readonly MarkupElement[] {
	const stops = arrowStops(figure).map((value) => offsetOf(scale, value));
	const drops: MarkupElement[] = [];
	const shafts: MarkupElement[] = [];
	const labels: Label[] = [];
	levels.forEach((level, index) => {
		const [start, end] = [stops[index] ?? 0, stops[index + 1] ?? 0];
		const direction = end > start ? 1 : -1;
		const below = index === 0 ? 0 : (levels[index - 1] ?? 0);
		drops.push(straight(place, [start, below], [start, level], 1, '3 3'));
		if (index === levels.length - 1) drops.push(straight(place, [end, level], [end, 0], 1, '3 3'));
		shafts.push(straight(place, [start, level], [end - direction * (headLength - 2), level], 2.5));
		shafts.push(dot(place, start, level, 3), head(place, end, level, direction, headLength, headHalf));
		if (!figure.arrowLabels) return;
		const text = writeArrowLabel(figure.arrows?.[index] ?? 0);
		const [x, y] = place((start + end) / 2, level + headHalf + 3);
		const isFlat = scale.orientation === 'horizontal';
		labels.push(isFlat ? { text, x, y, anchor: 'middle' } : { text, x, y: y + letterHeight / 2, anchor: 'start' });
	});
	return [...drops, ...labels.map(clearingMark), ...shafts, ...labels.map(textMark)];
}

function pointMarks(figure: NumberLineFigure, scale: NumberLineScale, place: Place): readonly MarkupElement[] {
	return (figure.points ?? []).flatMap((point) => {
		const at = offsetOf(scale, point.at);
		const mark = dot(place, at, 0, pointRadius);
		if (point.label === undefined) return [mark];
		const [x, y] = place(at, pointRadius + 9);
		const isFlat = scale.orientation === 'horizontal';
		const label: Label = isFlat
			? { text: point.label, x, y, anchor: 'middle' }
			: { text: point.label, x, y: y + letterHeight / 2, anchor: 'start' };
		return [clearingMark(label), mark, textMark(label)];
	});
}

function straight(
	place: Place,
	from: readonly [number, number],
	to: readonly [number, number],
	width: number,
	dash?: string,
): MarkupElement {
	return lineMark(...place(...from), ...place(...to), width, dash === undefined ? {} : { dash });
}

function head(place: Place, tip: number, away: number, direction: number, length: number, half: number): MarkupElement {
	const base = tip - direction * length;
	return polygonMark([place(tip, away), place(base, away + half), place(base, away - half)]);
}

function dot(place: Place, at: number, away: number, radius: number): MarkupElement {
	const [cx, cy] = place(at, away);
	return element('circle', { cx: roundPx(cx), cy: roundPx(cy), r: radius, fill: ink });
}
