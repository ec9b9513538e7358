import type { Kysely } from 'kysely';
import type { FacetCount, ItemPage, ItemQuery, ModelType } from '../../item-bank/types.ts';
import {
	activeFields,
	fitsField,
	fitsTraits,
	readStandardFilter,
	type StandardFilter,
	type TraitField,
	traitFields,
} from './item-filter.ts';
import { fittingTraits, matchingVersions, readPage, type Search } from './item-page.ts';
import { wordMatches, writeWordQuery } from './sqlite-engine.ts';
import type { StoreContext } from './store-context.ts';
import type { Tables } from './tables.ts';
import { type Traits, TraitsReader } from './traits.ts';

/** Approved items under one standard, per model type. */
export interface SupplyCount {
	readonly code: string;
	readonly model: ModelType;
	readonly count: number;
}

/**
 * Searches the standing versions: of each item the newest, and beside a newer draft or retired version the approved one.
 * An item under revision is therefore found twice, once in each status, and counts in supply by its approved version.
 */
export interface ItemSearch {
	/** One page, the number of all that fit, and counts per value. Throws UnknownStandardError, CursorRefusedError. */
	find(query: ItemQuery): Promise<ItemPage>;
	/** Approved items per standard and model type; each counts once, under its lead alignment. Cells without items are left out. */
	supply(framework: string, edition: string): Promise<readonly SupplyCount[]>;
}

/** How many versions there are of each combination of traits. */
type TraitCounts = readonly { readonly traits: number; readonly count: number }[];

/** Search over the tables of a store. */
export function createItemSearch({ kysely, fewHits }: StoreContext): ItemSearch {
	const reader = new TraitsReader();
	const read = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> =>
		kysely.transaction().setAccessMode('read only').execute(work);

	return {
		async find(query) {
			const filter = readStandardFilter(query);
			const words = query.text === undefined ? undefined : writeWordQuery(query.text);
			const hasNoWords = query.text !== undefined && words === undefined;
			return read(async (db) => {
				const known = await reader.read(db);
				const standards = filter && filter.codes.length > 0 ? await numberStandards(db, filter) : undefined;
				const search: Search = { query, standards, isLeadOnly: filter?.isLeadOnly ?? true, words };
				const counts = hasNoWords ? [] : await countTraits(db, search);
				const total = sumFitting(query, counts, known);
				const page = hasNoWords ? { items: [] } : await readPage(db, search, total < fewHits);
				if (query.facets === false) return { ...page, total };
				const code = hasNoWords || !filter ? [] : await countCodes(db, search, filter);
				return { ...page, total, facets: { ...rollUp(query, counts, known), ...(filter ? { code } : {}) } };
			});
		},

		async supply(framework, edition) {
			return read(async (db) => {
				const known = await reader.read(db);
				const rows = await db
					.selectFrom('alignments')
					.innerJoin('standards', 'standards.id', 'alignments.standard')
					.where('framework', '=', framework)
					.where('edition', '=', edition)
					.where('lead', '=', 1)
					.where('traits', 'in', fittingTraits(db, { status: ['approved'] }))
					.groupBy(['standards.id', 'traits'])
					.select(['code', 'traits', (build) => build.fn.countAll<number>().as('count')])
					.execute();
				const cells = new Map<string, SupplyCount>();
				for (const { code, traits, count } of rows) {
					const model = known.get(traits)?.given as ModelType;
					const before = cells.get(`${code} ${model}`)?.count ?? 0;
					cells.set(`${code} ${model}`, { code, model, count: before + count });
				}
				return [...cells.values()];
			});
		},
	};
}

async function numberStandards(db: Kysely<Tables>, filter: StandardFilter): Promise<readonly number[]> {
	const rows = await db
		.selectFrom('standards')
		.select('id')
		.where('framework', '=', filter.framework)
		.where('edition', '=', filter.edition)
		.where('code', 'in', filter.codes)
		.execute();
	return rows.map(({ id }) => id);
}

/** Counts by combination of traits among the versions that fit standard and text; the traits asked for are left out of account. */
async function countTraits(db: Kysely<Tables>, search: Search): Promise<TraitCounts> {
	const { standards, isLeadOnly, words } = search;
	if (standards === undefined) {
		if (words === undefined) {
			return db
				.selectFrom('standing_versions')
				.groupBy('traits')
				.select(['traits', (build) => build.fn.countAll<number>().as('count')])
				.execute();
		}
		return db
			.selectFrom('words')
			.innerJoin('standing_versions', 'standing_versions.id', 'words.rowid')
			.where(wordMatches(words))
			.groupBy('traits')
			.select(['traits', (build) => build.fn.countAll<number>().as('count')])
			.execute();
	}
	if (standards.length === 0) return [];
	// Several alignments of one version can fit only where other than lead alignments count.
	const isOnce = isLeadOnly || standards.length === 1;
	return db
		.selectFrom('alignments')
		.where('standard', 'in', standards)
		.$if(isLeadOnly, (select) => select.where('lead', '=', 1))
		.$if(words !== undefined, (select) => select.where('standing', 'in', matchingVersions(db, words ?? '')))
		.groupBy('traits')
		.select([
			'traits',
			({ fn }) => (isOnce ? fn.countAll<number>() : fn.count<number>('standing').distinct()).as('count'),
		])
		.execute();
}

/** Counts per standard of the framework, the standard asked for left out of account. */
async function countCodes(db: Kysely<Tables>, search: Search, filter: StandardFilter): Promise<readonly FacetCount[]> {
	const { query, words } = search;
	return db
		.selectFrom('alignments')
		.innerJoin('standards', 'standards.id', 'alignments.standard')
		.where('framework', '=', filter.framework)
		.where('edition', '=', filter.edition)
		.$if(filter.isLeadOnly, (select) => select.where('lead', '=', 1))
		.$if(activeFields(query).length > 0, (select) => select.where('traits', 'in', fittingTraits(db, query)))
		.$if(words !== undefined, (select) => select.where('standing', 'in', matchingVersions(db, words ?? '')))
		.groupBy('standards.id')
		.orderBy('standards.id')
		.select(['code as value', (build) => build.fn.countAll<number>().as('count')])
		.execute();
}

function sumFitting(query: ItemQuery, counts: TraitCounts, known: ReadonlyMap<number, Traits>): number {
	return counts.reduce((sum, { traits, count }) => {
		const found = known.get(traits);
		return found && fitsTraits(query, found) ? sum + count : sum;
	}, 0);
}

/** Counts per value of every field; each field is counted as if it had not been asked for. */
function rollUp(
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
