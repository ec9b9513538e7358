import {
	chmodSync,
	closeSync,
	copyFileSync,
	existsSync,
	fsyncSync,
	openSync,
	renameSync,
	rmSync,
	statSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { databaseName, prepareDataFolder } from './data-folder.ts';
import { readMigrations, readStoreVersion } from './migrations.ts';
import { copyDatabase, type Engine } from './sqlite-engine.ts';
import { translateErrors } from './sqlite-errors.ts';
import {
	FileExistsError,
	FileRefusedError,
	StoreDamagedError,
	StoreForeignError,
	StoreNewerError,
} from './storage-errors.ts';

/** A backup that was written. */
export interface BackupReport {
	readonly file: string;
	/** Size of the file in bytes. */
	readonly bytes: number;
}

/** A bank that was put back. */
export interface RestoreReport {
	/** Where the bank that was there before is kept; undefined when there was none. */
	readonly before?: string;
}

/** Writes a backup under a temporary name beside its target and renames it, so that an interruption leaves no half file. */
export async function backUpStore(engine: Engine, file: string): Promise<BackupReport> {
	if (existsSync(file)) throw new FileExistsError(file);
	const partial = `${file}.part-${process.pid}`;
	try {
		copyDatabase(engine, partial);
		moveIntoPlace(partial, file);
	} finally {
		rmSync(partial, { force: true });
	}
	return { file, bytes: statSync(file).size };
}

/**
 * Puts a backup in the place of the bank in a data folder. The file is checked first (ours, whole, not newer than known);
 * the bank that was there is kept beside it. Throws FileRefusedError, StoreForeignError, StoreDamagedError,
 * StoreNewerError, and StoreBusyError while another program has the bank open.
 */
export async function restoreStore(dataFolder: string, file: string, clock: () => Date): Promise<RestoreReport> {
	checkBackup(file);
	const target = prepareDataFolder(dataFolder);
	const partial = join(dataFolder, `${databaseName}.part-${process.pid}`);
	try {
		copyPrivately(file, partial);
		checkBackup(partial);
		const isEmpty = statSync(target).size === 0;
		if (!isEmpty) foldLog(target);
		const before = isEmpty ? undefined : keepBefore(target, clock);
		moveIntoPlace(partial, target);
		return before === undefined ? {} : { before };
	} finally {
		rmSync(partial, { force: true });
	}
}

/** Checks a backup without changing it. Throws FileRefusedError, StoreForeignError, StoreDamagedError, StoreNewerError. */
function checkBackup(file: string): void {
	let database: Database.Database;
	try {
		closeSync(openSync(file, 'r'));
		database = new Database(file, { readonly: true, fileMustExist: true });
	} catch (error) {
		throw new FileRefusedError(file, error);
	}
	try {
		const found = readStoreVersion(database, file);
		if (found === 0) throw new StoreForeignError(file);
		const known = readMigrations().at(-1)?.number ?? 0;
		if (found > known) throw new StoreNewerError(found, known);
		const finding = translateErrors(file, () => database.pragma('integrity_check(1)', { simple: true }));
		if (finding !== 'ok') throw new StoreDamagedError(file, String(finding));
	} finally {
		database.close();
	}
}

/** Brings everything of the present bank into its one file, which only works while nobody else has it open. */
function foldLog(file: string): void {
	translateErrors(file, () => {
		const database = new Database(file, { timeout: 0 });
		try {
			database.pragma('journal_mode = DELETE');
		} finally {
			database.close();
		}
	});
}

function keepBefore(file: string, clock: () => Date): string {
	const stamp = clock().toISOString().slice(0, 19).replaceAll(':', '');
	const name = `${file}.before-restore-${stamp}`;
	const free = existsSync(name) ? `${name}-${process.pid}` : name;
	if (existsSync(free)) throw new FileExistsError(free);
	renameSync(file, free);
	return free;
}

function copyPrivately(from: string, to: string): void {
	try {
		closeSync(openSync(to, 'wx', 0o600));
		copyFileSync(from, to);
		chmodSync(to, 0o600);
	} catch (error) {
		throw new FileRefusedError(to, error);
	}
}

function moveIntoPlace(partial: string, file: string): void {
	syncPath(partial);
	renameSync(partial, file);
	syncPath(dirname(file));
}

function syncPath(path: string): void {
	const handle = openSync(path, 'r');
	try {
		fsyncSync(handle);
	} finally {
		closeSync(handle);
	}
}
