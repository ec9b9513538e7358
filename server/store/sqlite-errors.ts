import Database from 'better-sqlite3';
import {
	DataFolderUnwritableError,
	DiskFullError,
	StoreBusyError,
	StoreDamagedError,
	StoreForeignError,
} from './storage-errors.ts';

/** Runs a piece of work and turns SQLite's error codes into the errors of the store. */
export function translateErrors<T>(file: string, work: () => T): T {
	try {
		return work();
	} catch (error) {
		throw translateError(file, error);
	}
}

function translateError(file: string, error: unknown): unknown {
	if (!(error instanceof Database.SqliteError)) {
		// better-sqlite3 throws a TypeError when the folder of the file is missing.
		return error instanceof TypeError && error.message.includes('directory')
			? new DataFolderUnwritableError(file, error)
			: error;
	}
	const { code } = error;
	if (code.startsWith('SQLITE_FULL')) return new DiskFullError(error);
	if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) return new StoreBusyError(error);
	if (code.startsWith('SQLITE_READONLY') || code.startsWith('SQLITE_CANTOPEN') || code.startsWith('SQLITE_PERM'))
		return new DataFolderUnwritableError(file, error);
	if (code.startsWith('SQLITE_NOTADB')) return new StoreForeignError(file, error);
	if (code.startsWith('SQLITE_CORRUPT')) return new StoreDamagedError(file, error.message, error);
	return error;
}
