import { chmodSync, closeSync, existsSync, openSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { makeFolder } from '../make-folder.ts';
import { DataFolderSharedError, DataFolderUnwritableError } from './storage-errors.ts';

/** Name of the database in a data folder. */
export const databaseName = 'zeropair.db';

/**
 * Makes a data folder ready: folder and database readable by their owner alone. Returns the database's path. Throws
 * {@link DataFolderUnwritableError}, and {@link DataFolderSharedError} for a folder of other things that is open to others.
 */
export function prepareDataFolder(folder: string): string {
	const file = join(folder, databaseName);
	try {
		makeFolder(folder);
		const isOpenToOthers = (statSync(folder).mode & 0o077) !== 0;
		if (isOpenToOthers) {
			if (!existsSync(file) && readdirSync(folder).length > 0) throw new DataFolderSharedError(folder);
			chmodSync(folder, 0o700);
		}
		closeSync(openSync(file, 'a', 0o600));
		chmodSync(file, 0o600);
	} catch (error) {
		throw error instanceof DataFolderSharedError ? error : new DataFolderUnwritableError(folder, error);
	}
	return file;
}
