import { leadAlignment } from '../../forms/item-traits.ts';
import type { Item, ModelType } from '../../types.ts';

/** An item with the points it is worth here, on a form or in the bank. */
export interface CoveredItem {
	readonly id: string;
	readonly item: Item;
	readonly points: number;
}

/** A framework in one edition. */
export interface CoverageScope {
	readonly framework: string;
	readonly edition: string;
}

/** What stands in one cell of standard × model × DOK. */
export interface CoverageCell {
	readonly standard: string;
	readonly model: ModelType;
	readonly dok: number;
	readonly items: number;
	readonly points: number;
	/** Items whose alignment says that they cover the standard only in part. */
	readonly partial: number;
	/** Ids, in the order given. */
	readonly ids: readonly string[];
}

/** Coverage of a bank or a form in one framework. */
export interface Coverage {
	/** Cells with items, by standard, model and DOK. */
	readonly cells: readonly CoverageCell[];
	/** Items without an alignment in the framework: they count nowhere. */
	readonly unaligned: readonly string[];
}

/**
 * Coverage by standard × model × DOK: each item counts once, under its lead alignment in the framework (the primary one, else
 * the first listed there). Units: items, and points as given. It shows what is asked, not what is known.
 */
export function coverItems(items: readonly CoveredItem[], { framework, edition }: CoverageScope): Coverage {
	const cells = new Map<
		string,
		{ readonly cell: Omit<CoverageCell, 'items' | 'points' | 'partial' | 'ids'>; readonly found: CoveredItem[] }
	>();
	const unaligned: string[] = [];
	for (const covered of items) {
		const alignment = leadAlignment(covered.item, framework, edition);
		if (alignment === undefined) {
			unaligned.push(covered.id);
			continue;
		}
		const cell = { standard: alignment.code, model: covered.item.given, dok: covered.item.dok };
		const key = `${cell.standard}\n${cell.model}\n${cell.dok}`;
		const known = cells.get(key) ?? { cell, found: [] };
		known.found.push(covered);
		cells.set(key, known);
	}
	return {
		cells: [...cells]
			.sort(([a], [b]) => (a < b ? -1 : 1))
			.map(([, { cell, found }]) => ({
				...cell,
				items: found.length,
				points: found.reduce((sum, { points }) => sum + points, 0),
				partial: found.filter(({ item }) => leadAlignment(item, framework, edition)?.extent === 'partial').length,
				ids: found.map(({ id }) => id),
			})),
		unaligned,
	};
}
