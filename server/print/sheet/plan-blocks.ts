import type {
	ExplanationItem,
	MatchField,
	MatchItem,
	OrderField,
	OrderItem,
	PointField,
	RatingField,
} from '../../../item-bank/types.ts';
import { textWidth } from '../page/fonts.ts';
import { toMm } from '../page/marks.ts';
import type { AnswerPlace } from '../placed-items.ts';
import type { SheetMeasures } from './measures.ts';
import { fieldOf, planRow } from './plan-fields.ts';
import { type LineRoom, planLine } from './plan-line.ts';

/** A field that stands by itself: its size in millimetres, and itself once the top left corner is known. */
export interface FieldBlock<Field = MatchField | OrderField | PointField | RatingField> {
	readonly width: number;
	readonly height: number;
	plan(x: number, y: number): Field;
}

/** Names of places in an order, from the first. */
export const ordinals = ['1st', '2nd', '3rd', '4th', '5th', '6th'] as const;

/** Room around the bubbles of a scorer, inside the frame that sets them apart, millimetres. */
export const ratingPadding = 1.6;

/**
 * The field of an item that is answered neither in one row of letters nor in a grid; undefined for those.
 * Throws PrintRoomError for a line with too many ticks.
 */
export function planBlock(place: AnswerPlace, measures: SheetMeasures, room: LineRoom): FieldBlock | undefined {
	const { item } = place;
	switch (item.kind) {
		case 'point':
			return planLine(place, item, measures, room);
		case 'order':
			return planOrder(place, item, measures);
		case 'match':
			return planMatch(place, item, measures);
		case 'explanation':
			return planRating(place, item, measures);
		case 'choice':
		case 'multiple-choice':
		case 'inline-choice':
		case 'gridded':
			return undefined;
		default:
			return item satisfies never;
	}
}

function rowsSize(
	rows: number,
	symbols: number,
	measures: SheetMeasures,
): { readonly width: number; readonly height: number } {
	const width = measures.label + (symbols - 1) * measures.pitch + measures.bubble / 2;
	return { width, height: measures.heading + rows * measures.rowStep };
}

function planOrder(place: AnswerPlace, { entries }: OrderItem, measures: SheetMeasures): FieldBlock<OrderField> {
	const symbols = entries.map(({ id }) => id);
	return {
		...rowsSize(symbols.length, symbols.length, measures),
		plan: (x, y) => ({ kind: 'order', ...fieldOf(place), columns: planRows(symbols.length, symbols, x, y, measures) }),
	};
}

function planMatch(place: AnswerPlace, item: MatchItem, measures: SheetMeasures): FieldBlock<MatchField> {
	const left = item.left.map(({ id }) => id);
	const symbols = item.right.map(({ id }) => id);
	return {
		...rowsSize(left.length, symbols.length, measures),
		plan: (x, y) => ({
			kind: 'match',
			...fieldOf(place),
			left,
			columns: planRows(left.length, symbols, x, y, measures),
		}),
	};
}

function planRows(
	rows: number,
	symbols: readonly string[],
	x: number,
	y: number,
	measures: SheetMeasures,
): MatchField['columns'] {
	const { heading, label, rowStep } = measures;
	return Array.from({ length: rows }, (_, row) =>
		planRow(symbols, x + label, y + heading + (row + 0.5) * rowStep, measures),
	);
}

/** From the left edge of a scorer's field to its first bubble's centre, millimetres: its number and the word stand there. */
function ratingLabel(place: AnswerPlace, measures: SheetMeasures): number {
	const text =
		textWidth(place.label, 'sans-bold', measures.labelSize) + textWidth(' scorer ', 'sans', measures.textSize);
	return toMm(text) + 3 * ratingPadding + measures.bubble / 2;
}

function planRating(place: AnswerPlace, { rubric }: ExplanationItem, measures: SheetMeasures): FieldBlock<RatingField> {
	const label = ratingLabel(place, measures);
	const symbols = rubric.map(({ points }) => String(points));
	const height = measures.bubble + 2 * ratingPadding;
	return {
		width: label + (symbols.length - 1) * measures.pitch + measures.bubble / 2 + ratingPadding,
		height,
		plan: (x, y) => ({
			kind: 'rating',
			...fieldOf(place),
			columns: [planRow(symbols, x + label, y + height / 2, measures)],
		}),
	};
}
