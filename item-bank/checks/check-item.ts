import { findKey } from '../items/key.ts';
import { partsOf } from '../items/parts.ts';
import type { Problem } from '../problem.ts';
import type { Item, PartItem } from '../types.ts';
import { checkAlignments } from './alignments.ts';
import { checkGiven } from './given.ts';
import { checkGrid } from './grid.ts';
import { checkOptions } from './options.ts';
import { checkBlocks, checkFigures, under } from './stem.ts';
import { checkTexts } from './texts.ts';

/**
 * Everything that stops an item that already fits its schema: an empty list means it may be approved. Problems come in
 * the order of the checks, then of the document.
 */
export function checkItem(item: Item): readonly Problem[] {
	return [
		...checkTexts(item),
		...checkStems(item),
		...checkFigures(item),
		...checkParts(item, checkOptions),
		...checkKey(item),
		...checkParts(item, checkGrid),
		...checkGiven(item),
		...checkSum(item),
		...checkAlignments(item),
		...checkParts(item, (part) => (item.kind === 'set' ? checkAlignments(part) : [])),
	];
}

function checkParts(item: Item, check: (part: PartItem) => readonly Problem[]): readonly Problem[] {
	return partsOf(item).flatMap((part, index) => under(item.kind === 'set' ? `/parts/${index}` : '', check(part)));
}

function checkStems(item: Item): readonly Problem[] {
	const own = checkBlocks(item.stem, '/stem');
	return item.kind === 'set' ? [...own, ...checkParts(item, (part) => checkBlocks(part.stem, '/stem'))] : own;
}

function checkSum(item: Item): readonly Problem[] {
	if (item.kind !== 'set') return [];
	const sum = item.parts.reduce((points, part) => points + part.points, 0);
	const message = `the parts are worth ${sum} points together, but the set says ${item.points}`;
	return sum === item.points ? [] : [{ code: 'set-points', path: '/points', message }];
}

function checkKey(item: Item): readonly Problem[] {
	const finding = findKey(item);
	return 'problems' in finding ? finding.problems : [];
}
