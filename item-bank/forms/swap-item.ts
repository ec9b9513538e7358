import type { ItemRecord } from '../items/record.ts';
import type { Blueprint, Form } from '../types.ts';
import { checkAgainstBlueprint } from './check-against-blueprint.ts';
import { positionsOf } from './check-form.ts';
import type { FindItem, ReportScope } from './compare-forms.ts';
import { type ItemTraits, traitsOf } from './item-traits.ts';

/** An item that could stand in another's place. */
export interface SwapOffer {
	readonly item: string;
	readonly version: number;
	/** 100 for an item like the old one in every trait, less for each trait that differs; never below 0. */
	readonly likeness: number;
	/** What differs, in words; empty when nothing does. */
	readonly differences: readonly string[];
	/** Whether the form would keep its blueprint as well as it does now; true where there is no blueprint. */
	readonly keepsPlan: boolean;
}

/** What to look for in a swap. */
export interface SwapQuestion {
	readonly form: Form;
	/** 1 for the first item of the form. */
	readonly position: number;
	/** Records to choose from, the form's own items among them; only approved ones are offered. */
	readonly pool: readonly ItemRecord[];
	/** In which framework standards are compared; the blueprint's where there is one. */
	readonly scope: ReportScope;
	readonly blueprint?: Blueprint;
	/** Ids not to offer, such as the items of a parallel form. */
	readonly avoid?: ReadonlySet<string>;
	/** How many offers at most; 5 when left out. */
	readonly most?: number;
}

/**
 * The best items for one place of a form: those that keep the plan first, then the most like the old one, then by id. Empty
 * when the place does not exist or the pool has nothing else.
 */
export function swapItem({
	form,
	position,
	pool,
	scope,
	blueprint,
	avoid,
	most = 5,
}: SwapQuestion): readonly SwapOffer[] {
	const findItem: FindItem = finderOf(pool);
	const here = positionsOf(form).find((place) => place.position === position)?.entry;
	const old = here && findItem(here.item, here.version);
	if (!here || !old) return [];
	const taken = new Set(positionsOf(form).map(({ entry }) => entry.item));
	const oldTraits = traitsOf({ id: here.item, version: here.version, item: old }, scope.framework, scope.edition);
	const offers = newestApproved(pool)
		.filter(({ id }) => !taken.has(id) && !avoid?.has(id))
		.map((record) => compareTraits(oldTraits, traitsOf(record, scope.framework, scope.edition)))
		.sort((a, b) => b.likeness - a.likeness || (a.item < b.item ? -1 : 1));
	const before = blueprint ? checkAgainstBlueprint(form, findItem, blueprint).length : 0;
	// A plan is checked for the likest only: an item unlike in many traits is no swap, whether or not the plan allows it.
	const checked = offers.slice(0, most * 8).map((offer) => ({
		...offer,
		keepsPlan:
			blueprint === undefined ||
			checkAgainstBlueprint(withItem(form, position, offer), findItem, blueprint).length <= before,
	}));
	return checked
		.sort((a, b) => Number(b.keepsPlan) - Number(a.keepsPlan) || b.likeness - a.likeness || (a.item < b.item ? -1 : 1))
		.slice(0, most);
}

/** The form with another item at one place; points given by the form go with the old item. */
export function withItem(form: Form, position: number, { item, version }: Pick<SwapOffer, 'item' | 'version'>): Form {
	const place = positionsOf(form).find((one) => one.position === position);
	if (!place) return form;
	return {
		...form,
		sections: form.sections.map((section, sectionIndex) =>
			sectionIndex !== place.sectionIndex
				? section
				: {
						...section,
						items: section.items.map((entry, index) => (index === place.indexInSection ? { item, version } : entry)),
					},
		),
	};
}

function compareTraits(old: ItemTraits, other: ItemTraits): SwapOffer {
	const parts: readonly (readonly [number, string])[] = [
		[differs(old.standard, other.standard, 25), `on ${other.standard ?? 'no standard'}, not ${old.standard ?? 'none'}`],
		[differs(old.model, other.model, 20), `gives ${other.model}, not ${old.model}`],
		[differs(old.kind, other.kind, 15), `${other.kind}, not ${old.kind}`],
		[differs(old.points, other.points, 10), `worth ${other.points}, not ${old.points}`],
		[differs(old.dok, other.dok, 8), `DOK ${other.dok}, not ${old.dok}`],
		[differs(old.shape, other.shape, 8), `${other.shape}, not ${old.shape}`],
		[differs(old.role, other.role, 5), `context role ${other.role ?? 'none'}, not ${old.role ?? 'none'}`],
		[differs(old.crossesZero, other.crossesZero, 3), other.crossesZero ? 'passes zero' : 'does not pass zero'],
		[
			Math.min(9, 3 * Math.abs(old.difficulty - other.difficulty)),
			`estimated difficulty ${other.difficulty}, not ${old.difficulty}`,
		],
		[Math.min(5, Math.abs(old.reading - other.reading) / 5), `${other.reading} words to read, not ${old.reading}`],
	];
	const found = parts.filter(([price]) => price > 0);
	return {
		item: other.id,
		version: other.version,
		likeness: Math.max(0, 100 - found.reduce((sum, [price]) => sum + price, 0)),
		differences: found.map(([, words]) => words),
		keepsPlan: true,
	};
}

function differs(a: unknown, b: unknown, price: number): number {
	return a === b ? 0 : price;
}

function newestApproved(pool: readonly ItemRecord[]): readonly ItemRecord[] {
	const newest = new Map<string, ItemRecord>();
	for (const record of pool) {
		const other = newest.get(record.id);
		if (record.status === 'approved' && (!other || other.version < record.version)) newest.set(record.id, record);
	}
	return [...newest.values()];
}

function finderOf(pool: readonly ItemRecord[]): FindItem {
	const items = new Map(pool.map(({ id, version, item }) => [`${id} ${version}`, item]));
	return (id, version) => items.get(`${id} ${version}`);
}
