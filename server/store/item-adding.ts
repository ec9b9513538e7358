import type { Kysely } from 'kysely';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import { addStanding, insertInto } from './standing-index.ts';
import { IdTakenError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** Keeps new items at version 1. Belongs inside a writing transaction. Throws IdTakenError. */
export async function addItems(db: Kysely<Tables>, records: readonly ItemRecord[], now: string): Promise<void> {
	const taken = await findTaken(db, records);
	if (taken !== undefined) throw new IdTakenError('item', taken);
	await insertInto(
		records.map(({ id, status }) => ({
			id,
			newest_version: 1,
			approved_version: status === 'approved' ? 1 : null,
			created_at: now,
		})),
		(values) => db.insertInto('items').values(values).execute(),
	);
	await addVersions(db, records, now);
	await addStanding(db, records, now);
	await insertInto(
		records.flatMap(({ id, status }) =>
			(status === 'approved' ? ['created', 'approved'] : ['created']).map((what) => ({
				subject: 'item',
				subject_id: id,
				version: 1,
				what,
				at: now,
				by: null,
			})),
		),
		(values) => db.insertInto('happenings').values(values).execute(),
	);
}

async function findTaken(db: Kysely<Tables>, records: readonly ItemRecord[]): Promise<string | undefined> {
	const seen = new Set<string>();
	for (const { id } of records) {
		if (seen.has(id)) return id;
		seen.add(id);
	}
	for (let start = 0; start < records.length; start += 500) {
		const ids = records.slice(start, start + 500).map(({ id }) => id);
		const row = await db.selectFrom('items').select('id').where('id', 'in', ids).executeTakeFirst();
		if (row) return row.id;
	}
	return undefined;
}

/** Keeps versions of items. Belongs inside a writing transaction. */
export function addVersions(db: Kysely<Tables>, records: readonly ItemRecord[], now: string): Promise<void> {
	return insertInto(
		records.map(({ id, version, status, item }) => ({
			item_id: id,
			version,
			status,
			document: JSON.stringify(item),
			created_at: now,
			created_by: null,
		})),
		(values) => db.insertInto('item_versions').values(values).execute(),
	);
}
