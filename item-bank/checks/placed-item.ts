import { positionsOf } from '../forms/check-form.ts';
import type { Problem } from '../problem.ts';
import type { Form, Item } from '../types.ts';
import type { Guideline } from './rule.ts';

/** An item where it stands on a form. */
export interface PlacedItem {
	/** 1 for the first item of the test. */
	readonly position: number;
	/** JSON pointer into the form. */
	readonly path: string;
	readonly item: Item;
}

/** One rule about items that stand on one form; it gives advice and stops nothing. */
export interface FormRule {
	readonly guideline: Guideline;
	find(placed: readonly PlacedItem[]): readonly Problem[];
}

/** The items of a form in order; those the lookup does not know are another check's problem. */
export function placeItems(
	form: Form,
	findItem: (id: string, version: number) => Item | undefined,
): readonly PlacedItem[] {
	return positionsOf(form).flatMap(({ position, entry, sectionIndex, indexInSection }) => {
		const item = findItem(entry.item, entry.version);
		return item ? [{ position, path: `/sections/${sectionIndex}/items/${indexInSection}`, item }] : [];
	});
}

/** Placed items by what they share, in order of the first; those that share nothing are left out. */
export function groupPlaced(
	placed: readonly PlacedItem[],
	namesOf: (item: Item) => readonly string[],
): readonly { readonly name: string; readonly members: readonly PlacedItem[] }[] {
	const groups = new Map<string, PlacedItem[]>();
	for (const one of placed) {
		for (const name of namesOf(one.item)) {
			const members = groups.get(name);
			if (members) members.push(one);
			else groups.set(name, [one]);
		}
	}
	return [...groups].map(([name, members]) => ({ name, members })).filter(({ members }) => members.length > 1);
}

/** Positions in words: 3, 7 and 12. */
export function listPositions(members: readonly PlacedItem[]): string {
	const positions = members.map(({ position }) => position);
	return positions.length < 2 ? positions.join('') : `${positions.slice(0, -1).join(', ')} and ${positions.at(-1)}`;
}
