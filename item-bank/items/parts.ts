import type { Item, PartItem } from '../types.ts';

/** The items a student answers: the parts of a set, or the item itself. */
export function partsOf(item: Item): readonly PartItem[] {
	return item.kind === 'set' ? item.parts : [item];
}
