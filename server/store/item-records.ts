import type { Kysely } from 'kysely';
import type { ItemRecord } from '../../item-bank/items/record.ts';
import type { Item } from '../../item-bank/types.ts';
import { NotFoundError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** Records of the versions the bank has, in the order asked for. */
export async function readRecords(
	db: Kysely<Tables>,
	wanted: readonly { readonly id: string; readonly version: number }[],
): Promise<readonly ItemRecord[]> {
	const found = new Map<string, ItemRecord>();
	for (let start = 0; start < wanted.length; start += 500) {
		const ids = wanted.slice(start, start + 500).map(({ id }) => id);
		const rows = await db
			.selectFrom('item_versions')
			.select(['item_id', 'version', 'status', 'document'])
			.where('item_id', 'in', ids)
			.execute();
		for (const { item_id: id, version, status, document } of rows) {
			found.set(`${id} ${version}`, { id, version, status, item: readItem(document) });
		}
	}
	return wanted.flatMap(({ id, version }) => found.get(`${id} ${version}`) ?? []);
}

/** A stored document as the item it was written from. */
export function readItem(document: string): Item {
	return JSON.parse(document) as Item;
}

/** Which versions of an item are newest and approved. Throws NotFoundError. */
export async function getItemRow(
	db: Kysely<Tables>,
	id: string,
): Promise<Pick<Tables['items'], 'newest_version' | 'approved_version'>> {
	const row = await db
		.selectFrom('items')
		.select(['newest_version', 'approved_version'])
		.where('id', '=', id)
		.executeTakeFirst();
	if (!row) throw new NotFoundError('item', id);
	return row;
}

/** One version of an item. Throws NotFoundError. */
export async function getRecord(db: Kysely<Tables>, id: string, version: number): Promise<ItemRecord> {
	const row = await db
		.selectFrom('item_versions')
		.select(['status', 'document'])
		.where('item_id', '=', id)
		.where('version', '=', version)
		.executeTakeFirst();
	if (!row) throw new NotFoundError('item', id, version);
	return { id, version, status: row.status, item: readItem(row.document) };
}
