import { findKey } from '../items/key.ts';
import type { Problem } from '../problem.ts';
import type { Item } from '../types.ts';
import { checkAlignments } from './alignments.ts';
import { checkGiven } from './given.ts';
import { checkGrid } from './grid.ts';
import { checkOptions } from './options.ts';
import { checkStem } from './stem.ts';
import { checkTexts } from './texts.ts';

/** A rule that every approved item keeps; it returns what speaks against approval. */
export type ItemCheck = (item: Item) => readonly Problem[];

const checks: readonly ItemCheck[] = [
	checkTexts,
	checkStem,
	checkOptions,
	checkKey,
	checkGrid,
	checkGiven,
	checkAlignments,
];

/**
 * Everything that stops an item that already fits its schema: an empty list means it may be approved. Problems come in
 * the order of the checks, then of the document.
 */
export function checkItem(item: Item): readonly Problem[] {
	return checks.flatMap((check) => check(item));
}

function checkKey(item: Item): readonly Problem[] {
	const finding = findKey(item);
	return 'problems' in finding ? finding.problems : [];
}
