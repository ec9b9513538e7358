import type { Kysely } from 'kysely';
import type { Blueprint, BlueprintEntry } from '../../item-bank/types.ts';
import { examineBlueprint } from './content-rules.ts';
import type { StoreContext } from './store-context.ts';
import { ContentRefusedError, IdTakenError, NotFoundError, VersionConflictError } from './store-errors.ts';
import type { Tables } from './tables.ts';

/** A new blueprint, with an id of the caller's choice or one of the bank's. */
export interface NewBlueprint {
	readonly id?: string;
	readonly blueprint: Blueprint;
}

/** Blueprints as immutable versions; one that contradicts itself is not kept. */
export interface BlueprintStore {
	/** Keeps a new blueprint. Throws ContentRefusedError, IdTakenError. */
	create(entry: NewBlueprint): Promise<BlueprintEntry>;
	/** Keeps a new version based on the newest one. Throws NotFoundError, VersionConflictError, ContentRefusedError. */
	revise(id: string, baseVersion: number, blueprint: Blueprint): Promise<BlueprintEntry>;
	/** One version, the newest when none is named. Throws NotFoundError. */
	get(id: string, version?: number): Promise<BlueprintEntry>;
	/** The newest version of every blueprint, by title. */
	list(): Promise<readonly BlueprintEntry[]>;
}

/** Blueprints kept in the tables of a store. */
export function createBlueprintStore({ kysely, clock, newId }: StoreContext): BlueprintStore {
	const write = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> => kysely.transaction().execute(work);
	const read = <T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> =>
		kysely.transaction().setAccessMode('read only').execute(work);

	return {
		async create({ id = newId(), blueprint }) {
			refuseUnfit(blueprint);
			return write(async (db) => {
				const taken = await db.selectFrom('blueprints').select('id').where('id', '=', id).executeTakeFirst();
				if (taken) throw new IdTakenError('blueprint', id);
				const now = clock().toISOString();
				const row = { id, newest_version: 1, title: blueprint.title, created_at: now };
				await db.insertInto('blueprints').values(row).execute();
				return addVersion(db, { id, version: 1, blueprint }, 'created', now);
			});
		},

		async revise(id, baseVersion, blueprint) {
			refuseUnfit(blueprint);
			return write(async (db) => {
				const newest = await getNewestVersion(db, id);
				if (newest !== baseVersion) throw new VersionConflictError('blueprint', id, baseVersion, newest);
				const version = newest + 1;
				const changes = { newest_version: version, title: blueprint.title };
				await db.updateTable('blueprints').set(changes).where('id', '=', id).execute();
				return addVersion(db, { id, version, blueprint }, 'revised', clock().toISOString());
			});
		},

		get(id, version) {
			return read(async (db) => {
				const wanted = version ?? (await getNewestVersion(db, id));
				const row = await db
					.selectFrom('blueprint_versions')
					.select('document')
					.where('blueprint_id', '=', id)
					.where('version', '=', wanted)
					.executeTakeFirst();
				if (!row) throw new NotFoundError('blueprint', id, version);
				return { id, version: wanted, blueprint: JSON.parse(row.document) as Blueprint };
			});
		},

		async list() {
			const rows = await kysely
				.selectFrom('blueprints')
				.innerJoin('blueprint_versions', (join) =>
					join
						.onRef('blueprint_versions.blueprint_id', '=', 'blueprints.id')
						.onRef('blueprint_versions.version', '=', 'blueprints.newest_version'),
				)
				.select(['id', 'version', 'document'])
				.orderBy('title')
				.orderBy('id')
				.execute();
			return rows.map(({ id, version, document }) => ({ id, version, blueprint: JSON.parse(document) as Blueprint }));
		},
	};
}

function refuseUnfit(blueprint: Blueprint): void {
	const problems = examineBlueprint(blueprint);
	if (problems.length > 0) throw new ContentRefusedError('blueprint', problems);
}

async function addVersion(
	db: Kysely<Tables>,
	entry: BlueprintEntry,
	what: string,
	now: string,
): Promise<BlueprintEntry> {
	const { id, version, blueprint } = entry;
	const document = JSON.stringify(blueprint);
	await db
		.insertInto('blueprint_versions')
		.values({ blueprint_id: id, version, document, created_at: now, created_by: null })
		.execute();
	await db
		.insertInto('happenings')
		.values({ subject: 'blueprint', subject_id: id, version, what, at: now, by: null })
		.execute();
	return entry;
}

async function getNewestVersion(db: Kysely<Tables>, id: string): Promise<number> {
	const row = await db.selectFrom('blueprints').select('newest_version').where('id', '=', id).executeTakeFirst();
	if (!row) throw new NotFoundError('blueprint', id);
	return row.newest_version;
}
