import { formTraits } from '../../item-bank/forms/compare-forms.ts';
import { type GroupRule, groupRules } from '../../item-bank/forms/item-groups.ts';
import type { ItemTraits } from '../../item-bank/forms/item-traits.ts';
import { type Measure, measuresOf } from '../../item-bank/forms/measures.ts';
import { type Requirement, requirementsOf } from '../../item-bank/forms/requirements.ts';
import type { Random } from '../../item-bank/random/random.ts';
import type { Blueprint } from '../../item-bank/types.ts';
import type { BuildRequest } from './build-request.ts';
import type { PoolItem } from './pool.ts';

/** An item that stands on every form, and its section (0-based). */
export interface FixedItem {
	readonly traits: ItemTraits;
	readonly section: number;
}

/** An item that has to be on one form (0-based), or on any. */
export interface WantedItem {
	readonly path: string;
	readonly id: string;
	readonly form: number | undefined;
}

/** Everything a search works on: the usable items and what is asked of them. */
export interface Instance {
	readonly blueprint: Blueprint;
	readonly count: number;
	/** Usable items in the order they are preferred in: least used first, then by the seed. */
	readonly items: readonly PoolItem[];
	readonly anchors: readonly FixedItem[];
	/**
	 * Ids of items that may stand on several forms and need not stand on any: anchors while it is asked whether they are part
	 * of a conflict. Leaving a requirement out must not make anything harder.
	 */
	readonly shared: ReadonlySet<string>;
	readonly wanted: readonly WantedItem[];
	readonly requirements: readonly Requirement[];
	readonly rules: readonly GroupRule[];
	readonly measures: readonly Measure[];
	/** Items of a form that the new ones are to be like. */
	readonly like: readonly ItemTraits[] | undefined;
}

/** Names of requirements that a search leaves out, to find which ones conflict. */
export type Dropped = ReadonlySet<string>;

/** Sets up a search over a pool. Items stand in seeded order, so that another seed gives other forms. */
export function makeInstance(
	request: BuildRequest,
	pool: readonly PoolItem[],
	random: Random,
	dropped: Dropped = new Set(),
): Instance {
	const { blueprint } = request;
	const usable = pool.filter(({ exclusions }) => exclusions.every(({ path }) => dropped.has(path)));
	const anchorIds = new Map(
		dropped.has('/anchors') ? [] : (blueprint.anchors ?? []).map(({ item, section }) => [item, section]),
	);
	const anchors = usable.flatMap(({ traits, sections }): readonly FixedItem[] => {
		if (!anchorIds.has(traits.id)) return [];
		const section = anchorIds.get(traits.id);
		return [{ traits, section: section === undefined ? (sections[0] ?? 0) : section - 1 }];
	});
	const items = [...random.shuffle(usable.filter(({ traits }) => !anchorIds.has(traits.id)))].sort(
		(a, b) => a.uses - b.uses,
	);
	const findItem = (id: string, version: number) =>
		request.pool.find((record) => record.id === id && record.version === version)?.item;
	const like = request.like && formTraits(request.like, findItem, blueprint);
	return {
		blueprint,
		count: request.count,
		items,
		anchors,
		shared: new Set(dropped.has('/anchors') ? (blueprint.anchors ?? []).map(({ item }) => item) : []),
		wanted: (blueprint.forced ?? [])
			.map(({ item, form }, index) => ({
				path: `/forced/${index}`,
				id: item,
				form: form === undefined ? undefined : form - 1,
			}))
			.filter(({ path }) => !dropped.has(path)),
		requirements: requirementsOf(blueprint).filter(({ path }) => !dropped.has(path)),
		rules: groupRules(blueprint).filter(({ path }) => !dropped.has(path)),
		measures: measuresOf(
			[...items.map(({ traits }) => traits), ...anchors.map(({ traits }) => traits), ...(like ?? [])],
			blueprint,
		)
			.filter(({ weight, band }) => weight > 0 || band !== undefined)
			.map((measure) => (dropped.has(bandPath(measure)) ? withoutBand(measure) : measure)),
		like,
	};
}

/** Name of the band that limits a measure. */
export function bandPath({ group }: Measure): string {
	return `/parallel/${group}`;
}

function withoutBand({ band: _band, ...measure }: Measure): Measure {
	return measure;
}

/** What items that stand on every form add to a measure of one. */
export function sumFixed(
	anchors: readonly FixedItem[],
	worth: (traits: ItemTraits, section: number) => number,
): number {
	return anchors.reduce((sum, { traits, section }) => sum + worth(traits, section), 0);
}
