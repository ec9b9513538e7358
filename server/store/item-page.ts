import { type Kysely, type SelectQueryBuilder, sql } from 'kysely';
import type { ItemPage, ItemQuery } from '../../item-bank/types.ts';
import { decodeCursor, encodeCursor } from './cursor.ts';
import { activeFields, traitFields } from './item-filter.ts';
import { readItem } from './item-records.ts';
import { unindexed, wordMatches } from './sqlite-engine.ts';
import type { Tables } from './tables.ts';

/** A query with its names looked up. */
export interface Search {
	readonly query: ItemQuery;
	/** Numbers of the named standards; undefined when no standard was named. */
	readonly standards: readonly number[] | undefined;
	readonly isLeadOnly: boolean;
	/** Search words in the engine's writing; undefined when no text was given. */
	readonly words: string | undefined;
}

const orders = {
	added: { column: 'standing_versions.id', direction: 'asc' },
	name: { column: 'standing_versions.name', direction: 'asc' },
	changed: { column: 'standing_versions.changed_at', direction: 'desc' },
} as const;

/** One page in the order asked for. isFew: whether to collect and sort the hits rather than to walk through the bank in order. Throws CursorRefusedError. */
export async function readPage(
	db: Kysely<Tables>,
	search: Search,
	isFew: boolean,
): Promise<Pick<ItemPage, 'items' | 'next'>> {
	const { query } = search;
	const sort = query.sort ?? 'added';
	const limit = query.limit ?? 25;
	const { column, direction } = orders[sort];
	// The word index walks in the order of its own numbers, which are those of the versions; named so, no sort is needed.
	const place = isWordIndexWalked(search) ? sql.ref<number>('words.rowid') : sql.ref<number>('standing_versions.id');
	const after = query.cursor === undefined ? undefined : decodeCursor(query.cursor, sort);
	const hits = selectHits(db, search, isFew)
		.$if(after !== undefined && sort === 'added', (select) => select.where(place, '>', after?.id ?? 0))
		.$if(after !== undefined && sort !== 'added', (select) =>
			select.where(
				sql<boolean>`(${sql.ref(column)}, standing_versions.id) ${sql.raw(direction === 'asc' ? '>' : '<')} (${after?.value ?? ''}, ${after?.id ?? 0})`,
			),
		)
		.select([
			'standing_versions.id',
			'standing_versions.item_id',
			'standing_versions.version',
			'standing_versions.name',
			'changed_at',
		])
		.orderBy(sort === 'added' ? place : sql.ref(column), direction)
		.$if(sort !== 'added', (select) => select.orderBy('standing_versions.id', direction))
		.limit(limit + 1);
	const rows = await db
		.selectFrom(hits.as('hits'))
		.innerJoin('item_versions', (join) =>
			join.onRef('item_versions.item_id', '=', 'hits.item_id').onRef('item_versions.version', '=', 'hits.version'),
		)
		.select(['hits.id', 'hits.item_id', 'hits.version', 'status', 'document', 'name', 'changed_at'])
		.orderBy(sort === 'added' ? 'hits.id' : sort === 'name' ? 'hits.name' : 'hits.changed_at', direction)
		.$if(sort !== 'added', (select) => select.orderBy('hits.id', direction))
		.execute();
	const shown = rows.slice(0, limit);
	const last = shown.at(-1);
	const items = shown.map(({ item_id, version, status, document }) => ({
		id: item_id,
		version,
		status,
		item: readItem(document),
	}));
	if (rows.length <= limit || !last) return { items };
	const value = { added: '', name: last.name, changed: last.changed_at }[sort];
	return { items, next: encodeCursor({ sort, value, id: last.id }) };
}

/** Numbers of the traits that fit a query. */
export function fittingTraits(
	db: Kysely<Tables>,
	query: ItemQuery,
): SelectQueryBuilder<Tables, 'traits', { id: number }> {
	let select = db.selectFrom('traits').select('traits.id');
	for (const field of activeFields(query)) {
		select = select.where(sql.ref(`traits.${traitFields[field]}`), 'in', query[field] ?? []);
	}
	return select;
}

/** Numbers of the standing versions that hold the words. */
export function matchingVersions(
	db: Kysely<Tables>,
	words: string,
): SelectQueryBuilder<Tables, 'words', { rowid: number }> {
	return db.selectFrom('words').select('words.rowid').where(wordMatches(words));
}

/** Whether the word index leads to the versions one after the other; else it is only asked which versions it holds. */
function isWordIndexWalked({ query, standards, words }: Search): boolean {
	return words !== undefined && standards === undefined && (query.sort ?? 'added') === 'added';
}

/** Standing versions that fit everything asked for. */
function selectHits(
	db: Kysely<Tables>,
	search: Search,
	isFew: boolean,
): SelectQueryBuilder<Tables, 'standing_versions', object> {
	const { query, standards, isLeadOnly, words } = search;
	let select = db.selectFrom('standing_versions');
	if (words !== undefined) {
		select = isWordIndexWalked(search)
			? (select
					.innerJoin('words', 'words.rowid', 'standing_versions.id')
					.where(wordMatches(words)) as unknown as typeof select)
			: select.where('standing_versions.id', 'in', matchingVersions(db, words));
	}
	const traits = activeFields(query).length > 0 ? fittingTraits(db, query) : undefined;
	if (standards !== undefined) {
		const aligned = db
			.selectFrom('alignments')
			.select('alignments.standing')
			.where('standard', 'in', standards)
			.$if(isLeadOnly, (each) => each.where('lead', '=', 1));
		if (isFew) {
			const fitting = traits ? aligned.where('alignments.traits', 'in', traits) : aligned;
			return select.where('standing_versions.id', 'in', fitting);
		}
		select = select.where(({ exists }) =>
			exists(aligned.whereRef('alignments.standing', '=', 'standing_versions.id' as never)),
		);
	}
	if (!traits) return select;
	return isFew && standards === undefined && words === undefined
		? select.where('standing_versions.traits', 'in', traits)
		: select.where(unindexed('standing_versions.traits'), 'in', traits);
}
