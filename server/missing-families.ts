import { families } from '../item-bank/families/index.ts';
import { checkParameters, faceOf, makeItem } from '../item-bank/families/make-items.ts';
import { traitsOf } from '../item-bank/forms/item-traits.ts';
import type { ItemRecord } from '../item-bank/items/record.ts';
import type { Item, MissingItems } from '../item-bank/types.ts';
import { idOf } from './making.ts';

/** Items made for a plan that lacks them, and what no family makes. */
export interface MissingMade {
	/** Version 1 of each, approved; not in the bank yet. */
	readonly records: readonly ItemRecord[];
	readonly unmade: readonly MissingItems[];
}

/** Seeds tried in one family for one sort of item. */
const mostSeeds = 400;

/**
 * Makes the items that a plan lacks, from families whose items are of the sort in every trait that was asked for. Never one
 * that asks the same as an item of the pool or as another of them; the same for the same seed.
 * @param scope framework and edition in which the plan counts standards.
 */
export function makeMissing(
	missing: readonly MissingItems[],
	scope: { readonly framework: string; readonly edition: string },
	pool: readonly ItemRecord[],
	seed: string,
): MissingMade {
	const faces = new Set(pool.map(({ item }) => faceOf(item)));
	const records: ItemRecord[] = [];
	const unmade: MissingItems[] = [];
	for (const wanted of missing) {
		const found: Item[] = [];
		for (const family of families) {
			if (!family.given.includes(wanted.model) || !family.kinds.includes(wanted.kind)) continue;
			if (!family.standards.some(({ code }) => code === wanted.standard)) continue;
			const { answeredBy } = family.parameters;
			const asks = answeredBy?.kind === 'word' && answeredBy.words.includes(wanted.kind);
			const parameters = asks ? { answeredBy: wanted.kind } : {};
			if (checkParameters(family, parameters).length > 0) continue;
			for (let turn = 1; turn <= mostSeeds && found.length < wanted.count; turn += 1) {
				const item = makeItem(family, `missing ${seed}/${turn}`, parameters);
				if (item === undefined || faces.has(faceOf(item)) || !isOfSort(item, wanted, scope)) continue;
				faces.add(faceOf(item));
				found.push(item);
			}
			if (found.length === wanted.count) break;
		}
		records.push(...found.map((item): ItemRecord => ({ id: idOf(item), version: 1, status: 'approved', item })));
		if (found.length < wanted.count) unmade.push({ ...wanted, count: wanted.count - found.length });
	}
	return { records, unmade };
}

function isOfSort(
	item: Item,
	{ standard, model, kind, dok, points, role, shape }: MissingItems,
	{ framework, edition }: { readonly framework: string; readonly edition: string },
): boolean {
	const traits = traitsOf({ id: '', version: 1, item }, framework, edition);
	return (
		traits.standard === standard &&
		traits.model === model &&
		traits.kind === kind &&
		traits.dok === dok &&
		traits.points === points &&
		(role === undefined || traits.role === role) &&
		(shape === undefined || traits.shape === shape)
	);
}
