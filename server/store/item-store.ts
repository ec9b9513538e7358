import type { Kysely } from 'kysely';
import type { ItemRecord, ItemStatus } from '../../item-bank/items/record.ts';
import type { Problem } from '../../item-bank/problem.ts';
import type { Item, ItemHistory } from '../../item-bank/types.ts';
import { examineItem } from './content-rules.ts';
import { addItems, addVersions } from './item-adding.ts';
import { getItemRow, getRecord, readItem, readRecords } from './item-records.ts';
import { addStanding, changeStanding, dropStanding } from './standing-index.ts';
import type { StoreContext } from './store-context.ts';
import {
	ContentRefusedError,
	ItemNotApprovableError,
	StatusRefusedError,
	VersionConflictError,
} from './store-errors.ts';
import type { Tables } from './tables.ts';

/** A new item, with an id of the caller's choice or one of the bank's. */
export interface NewItem {
	readonly id?: string;
	readonly item: Item;
}

/** A kept version, and what still speaks against approving it. */
export interface SavedItem {
	readonly record: ItemRecord;
	readonly problems: readonly Problem[];
}

/**
 * Items as immutable versions. Status belongs to a version: a new or revised item is a draft; approving a version retires
 * the approved one before it, so that an item has at most one approved version; revising an approved item leaves that
 * version approved, in supply and in forms until the new draft is approved. Retired versions stay readable.
 */
export interface ItemStore {
	/** Keeps a new draft. Throws ContentRefusedError, IdTakenError. */
	create(entry: NewItem): Promise<SavedItem>;
	/** Keeps many new drafts, or approved items, in one transaction: all or none. Throws IdTakenError, and ContentRefusedError (for approved items with everything that speaks against approval), whose paths begin with the place in the list. */
	createMany(entries: readonly NewItem[], status?: 'draft' | 'approved'): Promise<readonly ItemRecord[]>;
	/** Keeps a new draft version based on the newest one. Throws NotFoundError, VersionConflictError, ContentRefusedError. */
	revise(id: string, baseVersion: number, item: Item): Promise<SavedItem>;
	/** Approves a draft version. Throws NotFoundError, StatusRefusedError, ItemNotApprovableError. */
	approve(id: string, version: number): Promise<ItemRecord>;
	/** Retires a draft or approved version. Throws NotFoundError, StatusRefusedError. */
	retire(id: string, version: number): Promise<ItemRecord>;
	/** One version, the newest when none is named. Throws NotFoundError. */
	get(id: string, version?: number): Promise<ItemRecord>;
	/** Versions in the order asked for; those the bank does not have are left out. */
	getMany(wanted: readonly { readonly id: string; readonly version: number }[]): Promise<readonly ItemRecord[]>;
	/** Versions, newest first, and what was done. Throws NotFoundError. */
	history(id: string): Promise<ItemHistory>;
	/** Number of items, whatever their status. */
	count(): Promise<number>;
	/** Every approved version, by id. */
	approved(): Promise<readonly ItemRecord[]>;
}

/** Items kept in the tables of a store. */
export function createItemStore(context: StoreContext): ItemStore {
	const { kysely, clock, newId } = context;
	const write = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> => kysely.transaction().execute(work);

	return {
		async create({ id = newId(), item }) {
			const { refusals, problems } = examineItem(item);
			if (refusals.length > 0) throw new ContentRefusedError('item', refusals);
			const record: ItemRecord = { id, version: 1, status: 'draft', item };
			await write((db) => addItems(db, [record], clock().toISOString()));
			return { record, problems };
		},

		async createMany(entries, status = 'draft') {
			const refusals = entries.flatMap(({ item }, index) => {
				const findings = examineItem(item);
				return (status === 'approved' ? findings.problems : findings.refusals).map((problem) => ({
					...problem,
					path: `/${index}/item${problem.path}`,
				}));
			});
			if (refusals.length > 0) throw new ContentRefusedError('item', refusals.slice(0, 100));
			const records = entries.map(({ id = newId(), item }): ItemRecord => ({ id, version: 1, status, item }));
			await write((db) => addItems(db, records, clock().toISOString()));
			return records;
		},

		async revise(id, baseVersion, item) {
			const { refusals, problems } = examineItem(item);
			if (refusals.length > 0) throw new ContentRefusedError('item', refusals);
			const record = await write(async (db) => {
				const row = await getItemRow(db, id);
				if (row.newest_version !== baseVersion) {
					throw new VersionConflictError('item', id, baseVersion, row.newest_version);
				}
				const revised: ItemRecord = { id, version: baseVersion + 1, status: 'draft', item };
				const now = clock().toISOString();
				await addVersions(db, [revised], now);
				await db.updateTable('items').set({ newest_version: revised.version }).where('id', '=', id).execute();
				if (row.approved_version !== baseVersion) await dropStanding(db, id, [baseVersion]);
				await addStanding(db, [revised], now);
				await addHappening(db, id, revised.version, 'revised', now);
				return revised;
			});
			return { record, problems };
		},

		approve(id, version) {
			return write(async (db) => {
				const row = await getItemRow(db, id);
				const draft = await getRecord(db, id, version);
				if (draft.status !== 'draft') throw new StatusRefusedError(id, version, draft.status, 'approved');
				const { problems } = examineItem(draft.item);
				if (problems.length > 0) throw new ItemNotApprovableError(id, version, problems);
				const now = clock().toISOString();
				if (row.approved_version !== null) {
					await setStatus(db, id, row.approved_version, 'retired');
					await addHappening(db, id, row.approved_version, 'retired', now);
				}
				await setStatus(db, id, version, 'approved');
				await db.updateTable('items').set({ approved_version: version }).where('id', '=', id).execute();
				await addHappening(db, id, version, 'approved', now);
				return restand(db, id, now, version);
			});
		},

		retire(id, version) {
			return write(async (db) => {
				const row = await getItemRow(db, id);
				const record = await getRecord(db, id, version);
				if (record.status === 'retired') throw new StatusRefusedError(id, version, record.status, 'retired');
				const now = clock().toISOString();
				await setStatus(db, id, version, 'retired');
				if (row.approved_version === version) {
					await db.updateTable('items').set({ approved_version: null }).where('id', '=', id).execute();
				}
				await addHappening(db, id, version, 'retired', now);
				return restand(db, id, now, version);
			});
		},

		async get(id, version) {
			return kysely
				.transaction()
				.setAccessMode('read only')
				.execute(async (db) => {
					const chosen = version ?? (await getItemRow(db, id)).newest_version;
					return getRecord(db, id, chosen);
				});
		},

		async getMany(wanted) {
			return kysely
				.transaction()
				.setAccessMode('read only')
				.execute((db) => readRecords(db, wanted));
		},

		async history(id) {
			return kysely
				.transaction()
				.setAccessMode('read only')
				.execute(async (db) => {
					await getItemRow(db, id);
					const versions = await db
						.selectFrom('item_versions')
						.select(['version', 'status', 'document', 'created_at'])
						.where('item_id', '=', id)
						.orderBy('version', 'desc')
						.execute();
					const happenings = await db
						.selectFrom('happenings')
						.select(['what', 'version', 'at'])
						.where('subject', '=', 'item')
						.where('subject_id', '=', id)
						.orderBy('id', 'desc')
						.execute();
					return {
						id,
						versions: versions.map(({ version, status, document, created_at }) => ({
							version,
							status,
							createdAt: created_at,
							name: readItem(document).name,
						})),
						happenings: happenings.map(({ what, version, at }) => ({
							what: what as ItemHistory['happenings'][number]['what'],
							...(version === null ? {} : { version }),
							at,
						})),
					};
				});
		},

		async approved() {
			const rows = await kysely
				.selectFrom('items')
				.innerJoin('item_versions', (join) =>
					join
						.onRef('item_versions.item_id', '=', 'items.id')
						.onRef('item_versions.version', '=', 'items.approved_version'),
				)
				.select(['items.id', 'item_versions.version', 'item_versions.status', 'item_versions.document'])
				.orderBy('items.id')
				.execute();
			return rows.map(({ id, version, status, document }) => ({ id, version, status, item: readItem(document) }));
		},

		async count() {
			const row = await kysely
				.selectFrom('items')
				.select((build) => build.fn.countAll<number>().as('count'))
				.executeTakeFirstOrThrow();
			return row.count;
		},
	};
}

/** Brings the search in step with the versions that stand: the newest, and the approved one. Returns the named version. */
async function restand(db: Kysely<Tables>, id: string, now: string, version: number): Promise<ItemRecord> {
	const row = await getItemRow(db, id);
	const wanted = new Set([row.approved_version ?? row.newest_version, row.newest_version]);
	const rows = await db.selectFrom('standing_versions').select('version').where('item_id', '=', id).execute();
	const standing = rows.map((entry) => entry.version);
	await dropStanding(
		db,
		id,
		standing.filter((each) => !wanted.has(each)),
	);
	const records = await readRecords(
		db,
		[...wanted].map((each) => ({ id, version: each })),
	);
	const isStanding = (record: ItemRecord): boolean => standing.includes(record.version);
	for (const record of records.filter(isStanding)) await changeStanding(db, record, now);
	await addStanding(
		db,
		records.filter((record) => !isStanding(record)),
		now,
	);
	return getRecord(db, id, version);
}

async function setStatus(db: Kysely<Tables>, id: string, version: number, status: ItemStatus): Promise<void> {
	await db
		.updateTable('item_versions')
		.set({ status })
		.where('item_id', '=', id)
		.where('version', '=', version)
		.execute();
}

async function addHappening(db: Kysely<Tables>, id: string, version: number, what: string, at: string): Promise<void> {
	await db.insertInto('happenings').values({ subject: 'item', subject_id: id, version, what, at, by: null }).execute();
}
