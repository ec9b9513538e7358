import type { NumberLineFigure } from '../../types.ts';
import { word } from '../parameters.ts';

/** The parameter for how lines lie. */
export const orientation = word('How the number line lies.', ['any', 'horizontal', 'vertical']);

/** The parameter for the distance from tick to tick. */
export const tickSteps = word('Distance from tick to tick.', ['any', '1', '2', '5', '10', '20', '50']);

/** The distance from tick to tick: as asked, or by the lot, most often 1. */
export function stepOf(asked: 'any' | '1' | '2' | '5' | '10' | '20' | '50', lot: number): number {
	if (asked !== 'any') return Number(asked);
	return [1, 1, 1, 2, 5, 10, 20, 50][Math.floor(lot / 16) % 8] ?? 1;
}

/** Reach of a line that shows numbers with room at both ends: 8, 10, 12, 15, then by fives. */
export function reachFor(numbers: readonly number[]): number {
	const largest = Math.max(...numbers.map(Math.abs)) + 1;
	return [8, 10, 12].find((reach) => reach >= largest) ?? Math.ceil(largest / 5) * 5;
}

/** A line from one end to the other, as far on either side of zero, a tick for every step. */
export function evenLine(
	lies: NumberLineFigure['orientation'],
	reach: number,
	tickEvery = 1,
): NumberLineFigure & { readonly from: number; readonly to: number } {
	return { kind: 'number-line', orientation: lies, from: -reach, to: reach, tickEvery };
}

/** How a line lies: as asked, or by the lot. */
export function layLine(asked: 'any' | 'horizontal' | 'vertical', lot: number): NumberLineFigure['orientation'] {
	if (asked !== 'any') return asked;
	return Math.floor(lot / 4) % 3 === 0 ? 'vertical' : 'horizontal';
}
