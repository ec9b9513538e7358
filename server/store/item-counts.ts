import { type ExpressionBuilder, type Kysely, type SelectQueryBuilder, sql } from 'kysely';
import type { FacetCount, ItemQuery } from '../../item-bank/types.ts';
import {
	activeFields,
	fitsField,
	fitsTraits,
	type StandardFilter,
	type TraitField,
	traitFields,
} from './item-filter.ts';
import { fittingTraits, matchingVersions, type Search } from './item-page.ts';
import { unindexed, wordMatches } from './sqlite-engine.ts';
import type { Tables } from './tables.ts';
import type { Traits } from './traits.ts';

/** How many versions there are of each combination of traits. */
export type TraitCounts = readonly { readonly traits: number; readonly count: number }[];

/** Counts of a search that can find nothing. */
export const emptyFacets: Readonly<Record<TraitField, readonly FacetCount[]>> = {
	model: [],
	kind: [],
	dok: [],
	status: [],
	points: [],
	setting: [],
	role: [],
};

/** How many versions fit everything asked for. */
export async function countHits(db: Kysely<Tables>, search: Search): Promise<number> {
	const { query, standards, words } = search;
	const isNarrowed = activeFields(query).length > 0;
	if (standards !== undefined) {
		if (standards.length === 0) return 0;
		return takeCount(
			selectAligned(db, search)
				.$if(isNarrowed, (select) => select.where(traitsOfAligned(search), 'in', fittingTraits(db, query)))
				.select((build) => countOnce(build, search)),
		);
	}
	if (words !== undefined && !isNarrowed) {
		return takeCount(
			db
				.selectFrom('words')
				.where(wordMatches(words))
				.select((build) => build.fn.countAll<number>().as('count')),
		);
	}
	return takeCount(
		selectStanding(db, search)
			.$if(isNarrowed, (select) =>
				select.where(words === undefined ? 'traits' : unindexed('traits'), 'in', fittingTraits(db, query)),
			)
			.select((build) => build.fn.countAll<number>().as('count')),
	);
}

/** Counts by combination of traits among the versions that fit standard and text, the traits asked for left out of account. */
export async function countTraits(db: Kysely<Tables>, search: Search): Promise<TraitCounts> {
	if (search.standards === undefined) {
		return selectStanding(db, search)
			.groupBy('traits')
			.select(['traits', (build) => build.fn.countAll<number>().as('count')])
			.execute();
	}
	if (search.standards.length === 0) return [];
	return selectAligned(db, search)
		.groupBy('traits')
		.select(['traits', (build) => countOnce(build, search)])
		.execute();
}

/** Counts per standard of the framework, the standard asked for left out of account. */
export async function countCodes(
	db: Kysely<Tables>,
	search: Search,
	filter: StandardFilter,
): Promise<readonly FacetCount[]> {
	const { query, words } = search;
	return db
		.selectFrom('alignments')
		.innerJoin('standards', 'standards.id', 'alignments.standard')
		.where('framework', '=', filter.framework)
		.where('edition', '=', filter.edition)
		.$if(filter.isLeadOnly, (select) => select.where('lead', '=', 1))
		.$if(activeFields(query).length > 0, (select) =>
			select.where(traitsOfAligned(search), 'in', fittingTraits(db, query)),
		)
		.$if(words !== undefined, (select) => select.where('standing', 'in', matchingVersions(db, words ?? '')))
		.groupBy('standards.id')
		.orderBy('standards.id')
		.select(['code as value', (build) => build.fn.countAll<number>().as('count')])
		.execute();
}

/** Number of versions whose traits fit. */
export function sumFitting(query: ItemQuery, counts: TraitCounts, known: ReadonlyMap<number, Traits>): number {
	return counts.reduce((sum, { traits, count }) => {
		const found = known.get(traits);
		return found && fitsTraits(query, found) ? sum + count : sum;
	}, 0);
}

/** Counts per value of every field; each field is counted as if it had not been asked for. */
export function rollUp(
	query: ItemQuery,
	counts: TraitCounts,
	known: ReadonlyMap<number, Traits>,
): Readonly<Record<TraitField, readonly FacetCount[]>> {
	const fields = Object.keys(traitFields) as TraitField[];
	const active = activeFields(query);
	const sums = new Map(fields.map((field) => [field, new Map<string | number, number>()]));
	for (const { traits, count } of counts) {
		const found = known.get(traits);
		if (!found) continue;
		const failing = active.filter((field) => !fitsField(query, found, field));
		if (failing.length > 1) continue;
		for (const field of failing.length === 1 ? failing : fields) {
			const value = found[traitFields[field]];
			const sum = sums.get(field);
			if (value !== '') sum?.set(value, (sum.get(value) ?? 0) + count);
		}
	}
	const list = (field: TraitField): readonly FacetCount[] =>
		[...(sums.get(field) ?? [])]
			.map(([value, count]) => ({ value, count }))
			.sort((a, b) => (a.value < b.value ? -1 : 1));
	return Object.fromEntries(fields.map((field) => [field, list(field)])) as Record<TraitField, readonly FacetCount[]>;
}

/** Standing versions that hold the words, if any were asked for. */
function selectStanding(
	db: Kysely<Tables>,
	{ words }: Search,
): SelectQueryBuilder<Tables, 'standing_versions', object> {
	if (words === undefined) return db.selectFrom('standing_versions');
	return db
		.selectFrom('words')
		.innerJoin('standing_versions', 'standing_versions.id', 'words.rowid')
		.where(wordMatches(words)) as unknown as SelectQueryBuilder<Tables, 'standing_versions', object>;
}

/** Alignments to the named standards, of versions that hold the words, if any were asked for. */
function selectAligned(
	db: Kysely<Tables>,
	{ standards = [], isLeadOnly, words }: Search,
): SelectQueryBuilder<Tables, 'alignments', object> {
	return db
		.selectFrom('alignments')
		.where('standard', 'in', standards)
		.$if(isLeadOnly, (select) => select.where('lead', '=', 1))
		.$if(words !== undefined, (select) => select.where('standing', 'in', matchingVersions(db, words ?? '')));
}

/**
 * The traits of an alignment as a condition. With words they are not looked up in the index: SQLite would try every trait
 * with every version that holds the words, which takes seconds in a bank of 100,000.
 */
function traitsOfAligned({ words }: Search) {
	return words === undefined ? sql.ref<number>('alignments.traits') : unindexed('alignments.traits');
}

/** Several alignments of one version can fit only where other than lead alignments count. */
function countOnce({ fn }: ExpressionBuilder<Tables, 'alignments'>, { standards = [], isLeadOnly }: Search) {
	const isOnce = isLeadOnly || standards.length === 1;
	return (isOnce ? fn.countAll<number>() : fn.count<number>('standing').distinct()).as('count');
}

async function takeCount(select: { executeTakeFirstOrThrow(): Promise<{ count: number }> }): Promise<number> {
	const { count } = await select.executeTakeFirstOrThrow();
	return count;
}
