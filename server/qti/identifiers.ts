import { createHash } from 'node:crypto';

/** Identifiers of response and outcome variables that the standard response-processing templates expect. */
export const variables = { response: 'RESPONSE', score: 'SCORE', maximum: 'MAXSCORE', weight: 'WEIGHT' } as const;

/**
 * Identifier of one item version on every platform: the same version is the same identifier in each form, so that two
 * forms taken into one platform never overwrite each other's items. Letters and digits of a hash, 17 characters,
 * because bank ids may tell students what an item is about and may be longer than platforms take.
 */
export function itemIdentifier(id: string, version: number): string {
	return `item-${shortHash(`item ${id} ${version}`)}`;
}

/** Identifier of one form version as a test. */
export function testIdentifier(id: string, version: number): string {
	return `form-${shortHash(`form ${id} ${version}`)}`;
}

/** Identifier of a package from the identifiers it holds. */
export function packageIdentifier(held: readonly string[]): string {
	return `package-${shortHash(held.join(' '))}`;
}

/** Identifier of the option at an index: A, B, C … */
export function optionIdentifier(index: number): string {
	return String.fromCharCode(65 + index);
}

/** File name stem of the item at a position, counted from 1: item-007. Wide enough for the last position. */
export function fileStem(position: number, last: number): string {
	return `item-${String(position).padStart(Math.max(3, String(last).length), '0')}`;
}

// 48 bits: ten thousand items collide with a chance below one in a million; a collision is found as a repeated identifier.
function shortHash(text: string): string {
	return createHash('sha256').update(text).digest('hex').slice(0, 12);
}
