import type { Kysely } from 'kysely';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import { searchableText } from '../../item-bank/items/searchable-text.ts';
import type { Alignment } from '../../item-bank/types.ts';
import type { Tables } from './tables.ts';
import { extractTraits, keepTraits } from './traits.ts';

/** SQLite allows 32,766 values in a statement; this many rows stay far below it in every table. */
const rowsPerStatement = 200;

/**
 * Makes versions findable: their traits, alignments and words. changedAt: ISO 8601, UTC. Alignments must name known
 * standards, each once. Belongs inside a writing transaction.
 */
export async function addStanding(
	db: Kysely<Tables>,
	records: readonly ItemRecord[],
	changedAt: string,
): Promise<void> {
	const { last } = await db
		.selectFrom('standing_versions')
		.select((build) => build.fn.max('id').as('last'))
		.executeTakeFirstOrThrow();
	const first = (last ?? 0) + 1;
	const traits = await keepTraits(
		db,
		records.map(({ item, status }) => extractTraits(item, status)),
	);
	const standards = await keepStandards(
		db,
		records.flatMap(({ item }) => item.alignments),
	);
	const rows = records.map(({ id, version, item }, index) => ({
		id,
		version,
		item,
		standing: first + index,
		traits: traits[index] ?? 0,
	}));
	await insertInto(
		rows.map((row) => ({
			id: row.standing,
			item_id: row.id,
			version: row.version,
			traits: row.traits,
			name: row.item.name,
			changed_at: changedAt,
		})),
		(values) => db.insertInto('standing_versions').values(values).execute(),
	);
	await insertInto(
		rows.flatMap((row) =>
			row.item.alignments.map((alignment) => ({
				standing: row.standing,
				standard: standards.get(keyOf(alignment)) ?? 0,
				lead: isLead(alignment, row.item.alignments) ? 1 : 0,
				is_primary: alignment.primary === true ? 1 : 0,
				grade: alignment.grade,
				extent: alignment.extent,
				traits: row.traits,
			})),
		),
		(values) => db.insertInto('alignments').values(values).execute(),
	);
	await insertInto(
		rows.map(({ standing, item }) => ({
			rowid: standing,
			name: item.name,
			body: searchableText({ ...item, name: '', tags: [] }),
			tags: (item.tags ?? []).join(' '),
			codes: item.alignments.map(({ code }) => code).join(' '),
		})),
		(values) => db.insertInto('words').values(values).execute(),
	);
}

/** Takes over a new status of a version that can already be found. Belongs inside a writing transaction. */
export async function changeStanding(db: Kysely<Tables>, record: ItemRecord, changedAt: string): Promise<void> {
	const [traits = 0] = await keepTraits(db, [extractTraits(record.item, record.status)]);
	const row = await db
		.selectFrom('standing_versions')
		.select(['id', 'traits'])
		.where('item_id', '=', record.id)
		.where('version', '=', record.version)
		.executeTakeFirstOrThrow();
	if (row.traits === traits) return;
	await db.updateTable('standing_versions').set({ traits, changed_at: changedAt }).where('id', '=', row.id).execute();
	await db.updateTable('alignments').set({ traits }).where('standing', '=', row.id).execute();
}

/** Takes versions out of the search. Belongs inside a writing transaction. */
export async function dropStanding(db: Kysely<Tables>, itemId: string, versions: readonly number[]): Promise<void> {
	if (versions.length === 0) return;
	const rows = await db
		.selectFrom('standing_versions')
		.select('id')
		.where('item_id', '=', itemId)
		.where('version', 'in', versions)
		.execute();
	for (const { id } of rows) {
		await db.deleteFrom('words').where('rowid', '=', id).execute();
		await db.deleteFrom('standing_versions').where('id', '=', id).execute();
	}
}

/**
 * Whether an alignment is the one that counts its item within its framework and edition: the primary alignment, and in
 * frameworks without it the first one listed.
 */
export function isLead(alignment: Alignment, all: readonly Alignment[]): boolean {
	const sameFramework = all.filter(
		({ framework, edition }) => framework === alignment.framework && edition === alignment.edition,
	);
	return (sameFramework.find(({ primary }) => primary === true) ?? sameFramework[0]) === alignment;
}

async function keepStandards(
	db: Kysely<Tables>,
	alignments: readonly Alignment[],
): Promise<ReadonlyMap<string, number>> {
	const numbers = new Map<string, number>();
	for (const alignment of alignments) {
		const key = keyOf(alignment);
		if (numbers.has(key)) continue;
		const { framework, edition, code } = alignment;
		const row =
			(await db
				.selectFrom('standards')
				.select('id')
				.where('framework', '=', framework)
				.where('edition', '=', edition)
				.where('code', '=', code)
				.executeTakeFirst()) ??
			(await db.insertInto('standards').values({ framework, edition, code }).returning('id').executeTakeFirstOrThrow());
		numbers.set(key, row.id);
	}
	return numbers;
}

function keyOf({ framework, edition, code }: Alignment): string {
	return `${framework} ${edition} ${code}`;
}

/** Hands rows to a statement in lists short enough for one. */
export async function insertInto<Row>(
	rows: readonly Row[],
	insert: (values: Row[]) => Promise<unknown>,
): Promise<void> {
	for (let start = 0; start < rows.length; start += rowsPerStatement) {
		await insert(rows.slice(start, start + rowsPerStatement));
	}
}
