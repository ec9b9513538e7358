import { randomBytes } from 'node:crypto';
import { resolve } from 'node:path';
import type { PurgeReport, StudentRecord } from '../../item-bank/types.ts';
import { type BackupReport, backUpStore } from './backup.ts';
import { type BlueprintStore, createBlueprintStore } from './blueprint-store.ts';
import { prepareDataFolder } from './data-folder.ts';
import { createFormStore, type FormStore } from './form-store.ts';
import { createGroupStore, type GroupStore } from './group-store.ts';
import { createItemSearch, type ItemSearch } from './item-search.ts';
import { createItemStore, type ItemStore } from './item-store.ts';
import { migrateStore } from './migrations.ts';
import { type PurgeTarget, purge } from './purge.ts';
import { createRatingStore, type RatingStore } from './rating-store.ts';
import { createResponseStore, type ResponseStore } from './response-store.ts';
import { createSittingStore, type SittingStore } from './sitting-store.ts';
import type { StatementListener } from './sqlite-driver.ts';
import { openEngine } from './sqlite-engine.ts';
import { readStudentRecord } from './student-record.ts';

/** An open bank. Each method is one whole unit of work; StoreBusyError and DiskFullError can come from every one that writes. */
export interface Store {
	readonly items: ItemStore & ItemSearch;
	readonly forms: FormStore;
	readonly groups: GroupStore;
	readonly blueprints: BlueprintStore;
	readonly sittings: SittingStore;
	readonly responses: ResponseStore;
	readonly ratings: RatingStore;
	/** Everything the bank holds about one student code. Throws NotFoundError. */
	readStudent(code: string): Promise<StudentRecord>;
	/** Deletes a sitting or a student code for good, here and in backups; see purge. Throws NotFoundError. */
	purge(target: PurgeTarget, backups?: readonly string[]): Promise<PurgeReport>;
	/** Whether nothing was ever kept in it. */
	isNew(): Promise<boolean>;
	/** Writes a consistent copy into a new file that only its owner can read. Throws FileExistsError, FileRefusedError. */
	backup(file: string): Promise<BackupReport>;
	/** Closes the database; the store cannot be used afterwards. */
	close(): Promise<void>;
}

/** What a store takes from the world around it. */
export interface StoreOptions {
	/** The current time. */
	readonly clock?: () => Date;
	/** Makes an id that no other has: lower-case letters, digits and hyphens, 3 to 63 long. */
	readonly newId?: () => string;
	/** Milliseconds to wait for another writer before StoreBusyError; 5,000 when left out. */
	readonly busyTimeout?: number;
	/** Below this many hits a search collects and sorts them; from there on it walks through the bank in order. */
	readonly fewHits?: number;
	/** Told of every statement and its values before it runs. */
	readonly onStatement?: StatementListener;
	/** Pages of 4,096 bytes that the database may fill, so that a test can run out of room. */
	readonly mostPages?: number;
}

/**
 * Opens the bank in a data folder, which is made if missing, or an empty one in memory (':memory:'). Throws
 * DataFolderUnwritableError, DataFolderSharedError, StoreNewerError, StoreForeignError, StoreDamagedError, StoreBusyError.
 */
export async function openStore(dataFolder: string, options: StoreOptions = {}): Promise<Store> {
	const {
		clock = () => new Date(),
		newId = randomId,
		busyTimeout = 5000,
		fewHits = 2000,
		onStatement,
		mostPages,
	} = options;
	const file = dataFolder === ':memory:' ? dataFolder : prepareDataFolder(dataFolder);
	const engine = openEngine(file, busyTimeout, onStatement);
	try {
		if (mostPages !== undefined) engine.database.pragma(`max_page_count = ${mostPages}`);
		migrateStore(engine.database, file, clock);
	} catch (error) {
		engine.database.close();
		throw error;
	}
	const context = { kysely: engine.kysely, clock, newId, fewHits };
	return {
		items: { ...createItemStore(context), ...createItemSearch(context) },
		forms: createFormStore(context),
		groups: createGroupStore(context),
		blueprints: createBlueprintStore(context),
		sittings: createSittingStore(context),
		responses: createResponseStore(context),
		ratings: createRatingStore(context),
		readStudent: (code) => readStudentRecord(engine.kysely, code),
		purge: async (target, backups = []) =>
			engine.kysely.connection().execute(async () => purge(engine, file, target, backups, clock().toISOString())),
		isNew: async () => {
			const happened = await engine.kysely.selectFrom('happenings').select('id').limit(1).executeTakeFirst();
			return happened === undefined;
		},
		backup: async (target) => {
			const report = await backUpStore(engine, target);
			const row = { file: resolve(report.file), written_at: clock().toISOString() };
			await engine.kysely
				.insertInto('backups')
				.values(row)
				.onConflict((clash) => clash.doUpdateSet(row))
				.execute();
			return report;
		},
		close: async () => {
			await engine.kysely.destroy();
			// Kysely closes only what it has used.
			engine.database.close();
		},
	};
}

/** Ten letters and digits without those that look alike: 50 bits. */
function randomId(): string {
	const letters = '0123456789abcdefghjkmnpqrstvwxyz';
	return [...randomBytes(10)].map((byte) => letters[byte % 32]).join('');
}
