import { createHash } from 'node:crypto';

/**
 * Identifiers of variables: RESPONSE and SCORE as the standard response-processing templates expect, FEEDBACK for what is said
 * of an answer and STEPS for the worked steps.
 */
export const variables = {
	response: 'RESPONSE',
	score: 'SCORE',
	maximum: 'MAXSCORE',
	weight: 'WEIGHT',
	feedback: 'FEEDBACK',
	steps: 'STEPS',
} as const;

/**
 * Identifier of one item version on every platform: the same version is the same identifier in each form, so that two
 * forms taken into one platform never overwrite each other's items. Letters and digits of a hash, 17 characters,
 * because bank ids may tell students what an item is about and may be longer than platforms take. Each part of a set, counted
 * from 1, has its own.
 */
export function itemIdentifier(id: string, version: number, part?: number): string {
	return `item-${shortHash(`item ${id} ${version}${part === undefined ? '' : ` part ${part}`}`)}`;
}

/** Identifier of what the parts of a set share, by the item version of the set. */
export function stimulusIdentifier(id: string, version: number): string {
	return `stimulus-${shortHash(`stimulus ${id} ${version}`)}`;
}

/** Identifier of one form version as a test. */
export function testIdentifier(id: string, version: number): string {
	return `form-${shortHash(`form ${id} ${version}`)}`;
}

/** Identifier of a package from the identifiers it holds. */
export function packageIdentifier(held: readonly string[]): string {
	return `package-${shortHash(held.join(' '))}`;
}

/** Identifier of the response in one column of an answer grid, counted from 0 at the left: COLUMN-1, COLUMN-2 … */
export function columnIdentifier(column: number): string {
	return `COLUMN-${column + 1}`;
}

/** Identifier of the outcome that says what a column shows, blank or marked: MARK-1, MARK-2 … */
export function markIdentifier(column: number): string {
	return `MARK-${column + 1}`;
}

/** Identifier of a mark in a column of an answer grid: D0 to D9, MINUS, PLUS, or BLANK for none. */
export function symbolIdentifier(symbol: string | undefined): string {
	if (symbol === undefined) return 'BLANK';
	if (symbol === '-') return 'MINUS';
	return symbol === '+' ? 'PLUS' : `D${symbol}`;
}

/** Identifier of the option at an index: A, B, C … */
export function optionIdentifier(index: number): string {
	return String.fromCharCode(65 + index);
}

/** Identifier of the tick at an index, from the smallest: P1, P2 … */
export function tickIdentifier(index: number): string {
	return `P${index + 1}`;
}

/** Identifier of the entry at an index in one column of a match: L1, L2 … on the left, R1, R2 … on the right. */
export function entryIdentifier(side: 'left' | 'right', index: number): string {
	return `${side === 'left' ? 'L' : 'R'}${index + 1}`;
}

/** File name stem of the item at a position, counted from 1: item-007, or item-007-part-2. Wide enough for the last position. */
export function fileStem(position: number, last: number, part?: number): string {
	const stem = `item-${String(position).padStart(Math.max(3, String(last).length), '0')}`;
	return part === undefined ? stem : `${stem}-part-${part}`;
}

// 48 bits: ten thousand items collide with a chance below one in a million; a collision is found as a repeated identifier.
function shortHash(text: string): string {
	return createHash('sha256').update(text).digest('hex').slice(0, 12);
}
