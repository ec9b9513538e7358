import { findKey } from '../../item-bank/items/key.ts';
import type { Item } from '../../item-bank/types.ts';

/** Codes of the problems that keep an item from having a key; none when it has one. */
export function keyCodes(item: Item): readonly string[] {
	const finding = findKey(item);
	return 'problems' in finding ? finding.problems.map(({ code }) => code) : [];
}
