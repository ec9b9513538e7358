import { writeNumber } from '../../../item-bank/figures/marks.ts';
import { layScale, type NumberLineScale } from '../../../item-bank/figures/number-line-scale.ts';
import type { PointField, PointItem } from '../../../item-bank/types.ts';
import { textWidth } from '../page/fonts.ts';
import { toMm } from '../page/marks.ts';
import type { AnswerPlace } from '../placed-items.ts';
import { PrintRoomError } from '../print-errors.ts';
import { round, type SheetMeasures } from './measures.ts';
import { fieldOf } from './plan-fields.ts';

/** The most that a line may take, millimetres. */
export interface LineRoom {
	readonly width: number;
	readonly height: number;
}

/** Half the length of a tick, and from its end to the nearest bubble's edge, millimetres. */
export const tickReach = 1.4;
const bubbleGap = 1.1;
/** The line runs on this far beyond its last ticks, millimetres. */
export const overhang = 4;
/** From the end of a tick of an upright line to its number, millimetres. */
export const numberAway = 1.5;
/** Between the numbers of a line, millimetres: less, and a minus could be read as joining them. Common practice, no source. */
const numberGap = 1.8;

/** How a line is laid out at a spacing of its ticks: lanes of bubbles, levels of numbers, and its reach, millimetres. */
export interface LineParts {
	readonly lanes: 1 | 2;
	readonly levels: 1 | 2;
	/** Away from the line to the side of the numbers, and to the side of the bubbles. */
	readonly before: number;
	readonly after: number;
	/** Along the line, beyond its last ticks. */
	readonly ends: number;
}

/** Lays out a line whose ticks stand `spacing` millimetres apart. */
export function layLine({ line }: PointItem, measures: SheetMeasures, spacing: number): LineParts {
	const scale = layScale(line);
	const isFlat = scale.orientation === 'horizontal';
	const lanes = spacing < measures.pitch - 0.005 ? 2 : 1;
	const levels = isFlat && spacing < numberRoom(scale, measures) - 0.005 ? 2 : 1;
	const hasLetters = line.points?.some(({ label }) => label !== undefined) ?? false;
	const step = numberHeight(measures) + 1;
	const before = isFlat
		? tickReach + 1 + levels * step + (hasLetters ? step : 0)
		: tickReach + numberAway + widestNumber(scale, measures) + (hasLetters ? letterRoom(measures) : 0);
	const after = tickReach + bubbleGap + measures.bubble + (lanes - 1) * measures.pitch;
	return { lanes, levels, before, after, ends: endsOf(scale, measures) };
}

/**
 * A number line drawn small with an empty bubble under every tick (beside it where the line is upright), and the numbers
 * that the item shows, and no others, on the other side. Throws PrintRoomError where bubbles would touch.
 */
export function planLine(
	place: AnswerPlace,
	item: PointItem,
	measures: SheetMeasures,
	room: LineRoom,
): { readonly width: number; readonly height: number; plan(x: number, y: number): PointField } {
	const scale = layScale(item.line);
	const isFlat = scale.orientation === 'horizontal';
	const { heading, bubble, pitch } = measures;
	const available = (isFlat ? room.width : room.height - heading) - 2 * endsOf(scale, measures);
	const spacing = spaceTicks(place, scale, measures, available);
	const { lanes, before, after, ends } = layLine(item, measures, spacing);
	const length = spacing * (scale.ticks.length - 1);
	const firstLane = tickReach + bubbleGap + bubble / 2;
	const [width, height] = isFlat ? [length + 2 * ends, before + after] : [before + after, length + 2 * ends];
	return {
		width,
		height: heading + height,
		plan(x, y) {
			const top = y + heading;
			const [axis, start] = isFlat ? [top + before, x + ends] : [x + before, top + ends + length];
			const bubbles = scale.ticks.map((value, index) => {
				const at = isFlat ? start + index * spacing : start - index * spacing;
				const away = axis + firstLane + (index % lanes) * pitch;
				return { symbol: String(value), x: round(isFlat ? at : away), y: round(isFlat ? away : at) };
			});
			const [from, to, across] = [round(start), round(isFlat ? start + length : start - length), round(axis)];
			const line = isFlat ? { x1: from, y1: across, x2: to, y2: across } : { x1: across, y1: from, x2: across, y2: to };
			return { kind: 'point', ...fieldOf(place), line, columns: [{ bubbles }] };
		},
	};
}

/** Height of a number on a line, millimetres. */
export function numberHeight(measures: SheetMeasures): number {
	return toMm(measures.textSize * 0.66);
}

/** Room for the letter of a point beside the numbers of an upright line, millimetres. */
function letterRoom(measures: SheetMeasures): number {
	return toMm(measures.textSize) + 1;
}

function numberWidth(value: number, measures: SheetMeasures): number {
	return toMm(textWidth(writeNumber(value), 'serif', measures.textSize));
}

function widestNumber({ labelled }: NumberLineScale, measures: SheetMeasures): number {
	return Math.max(0, ...labelled.map((value) => numberWidth(value, measures)));
}

/** The overhang, or more where the numbers at the ends of a flat line reach further. */
function endsOf({ ticks, labelled, orientation }: NumberLineScale, measures: SheetMeasures): number {
	if (orientation === 'vertical') return overhang;
	const ends = [ticks[0], ticks.at(-1)].flatMap((end) => (end !== undefined && labelled.includes(end) ? [end] : []));
	return Math.max(overhang, ...ends.map((end) => numberWidth(end, measures) / 2));
}

/** Wide enough for one lane of bubbles and one level of numbers where there is room, else as wide as there is. */
function spaceTicks(place: AnswerPlace, scale: NumberLineScale, measures: SheetMeasures, available: number): number {
	const { bubble, pitch } = measures;
	const steps = scale.ticks.length - 1;
	const isFlat = scale.orientation === 'horizontal';
	const wanted = Math.max(pitch, isFlat ? numberRoom(scale, measures) : 0);
	const spacing = Math.min(wanted, Math.floor((available / steps) * 100) / 100);
	// The stroke to a bubble of the second lane passes between two of the first.
	const least = Math.max(pitch / 2, bubble / 2 + 0.8);
	if (spacing < least) {
		const code = isFlat ? ({ code: 'print-figure-too-wide' } as const) : ({ code: 'print-item-too-tall' } as const);
		throw new PrintRoomError({ ...code, item: place.id, needed: least * steps, available });
	}
	return spacing;
}

/** The least spacing of ticks that keeps the numbers of a flat line apart on one level. */
function numberRoom({ labelled, tickEvery }: NumberLineScale, measures: SheetMeasures): number {
	const needs = labelled.slice(1).map((value, index) => {
		const before = labelled[index] ?? value;
		const room = (numberWidth(before, measures) + numberWidth(value, measures)) / 2 + numberGap;
		return (room * tickEvery) / (value - before);
	});
	return Math.max(0, ...needs);
}
