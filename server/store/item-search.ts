import type { Kysely } from 'kysely';
import type { ItemPage, ItemQuery, ModelType, SupplyQuery } from '../../item-bank/types.ts';
import { countCodes, countHits, countTraits, emptyFacets, rollUp, sumFitting } from './item-counts.ts';
import { readStandardFilter, type StandardFilter } from './item-filter.ts';
import { fittingTraits, readPage, type Search } from './item-page.ts';
import { writeWordQuery } from './sqlite-engine.ts';
import type { StoreContext } from './store-context.ts';
import type { Tables } from './tables.ts';
import { TraitsReader } from './traits.ts';

/** Items under one standard, per model type. */
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
	/**
	 * Items that fit per standard and model type, approved ones unless a status is asked for; each counts once, under its lead
	 * alignment. Cells without items are left out.
	 */
	supply(framework: string, edition: string, query?: SupplyQuery): Promise<readonly SupplyCount[]>;
}

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
				const standards = filter && filter.codes.length > 0 ? await numberStandards(db, filter) : undefined;
				const search: Search = { query, standards, isLeadOnly: filter?.isLeadOnly ?? true, words };
				if (hasNoWords) {
					const facets = filter ? { ...emptyFacets, code: [] } : emptyFacets;
					return { items: [], total: 0, ...(query.facets === false ? {} : { facets }) };
				}
				if (query.facets === false) {
					const total = await countHits(db, search);
					return { ...(await readPage(db, search, total < fewHits)), total };
				}
				const known = await reader.read(db);
				const counts = await countTraits(db, search);
				const total = sumFitting(query, counts, known);
				const page = await readPage(db, search, total < fewHits);
				const codes = filter ? { code: await countCodes(db, search, filter) } : {};
				return { ...page, total, facets: { ...rollUp(query, counts, known), ...codes } };
			});
		},

		async supply(framework, edition, query = {}) {
			return read(async (db) => {
				const known = await reader.read(db);
				const rows = await db
					.selectFrom('alignments')
					.innerJoin('standards', 'standards.id', 'alignments.standard')
					.where('framework', '=', framework)
					.where('edition', '=', edition)
					.where('lead', '=', 1)
					.where('traits', 'in', fittingTraits(db, { status: ['approved'], ...query }))
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
