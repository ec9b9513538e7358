import { closeSync, openSync } from 'node:fs';
import Database from 'better-sqlite3';
import { Kysely, sql } from 'kysely';
import { type StatementListener, SyncedDialect } from './sqlite-driver.ts';
import { translateErrors } from './sqlite-errors.ts';
import { FileRefusedError } from './storage-errors.ts';
import type { Tables } from './tables.ts';

/** Marks a SQLite file as a bank of this project ("Zero" in ASCII). */
export const applicationId = 0x5a65726f;

/** An open SQLite database: kysely for the repositories, the raw handle for what only SQLite knows. */
export interface Engine {
	readonly kysely: Kysely<Tables>;
	readonly database: Database.Database;
}

/**
 * Opens a database file (or ':memory:') with foreign keys and write-ahead logging. busyTimeout: milliseconds to wait for
 * another writer. onStatement: told of every statement kysely runs. Throws DataFolderUnwritableError, StoreForeignError, StoreBusyError.
 */
export function openEngine(file: string, busyTimeout: number, onStatement?: StatementListener): Engine {
	const database = translateErrors(file, () => {
		const opened = new Database(file, { timeout: busyTimeout });
		opened.pragma('foreign_keys = ON');
		opened.pragma('journal_mode = WAL');
		opened.pragma('synchronous = NORMAL');
		return opened;
	});
	return { kysely: new Kysely<Tables>({ dialect: new SyncedDialect(database, file, onStatement) }), database };
}

/** Condition "the standing version with this id holds these words", for a search text turned by {@link writeWordQuery}. */
export const wordMatches = (query: string) => sql<boolean>`words MATCH ${query}`;

/** A whole-number column that the planner shall not look up through an index. */
export const unindexed = (column: string) => sql<number>`+${sql.ref(column)}`;

/**
 * FTS5 query for what a person typed: every word has to be there, text between double quotes as it stands, and the last
 * word may go on. Undefined when nothing in it is a letter or digit, so that nothing can be found.
 */
export function writeWordQuery(typed: string): string | undefined {
	const phrases = [...typed.matchAll(/"([^"]*)"?|([^\s"]+)/g)]
		.map(([, quoted, word]) => ({ text: quoted ?? word ?? '', mayGoOn: quoted === undefined }))
		.filter(({ text }) => /[\p{L}\p{N}]/u.test(text));
	if (phrases.length === 0) return undefined;
	return phrases
		.map(({ text, mayGoOn }, index) => `"${text}"${mayGoOn && index === phrases.length - 1 ? '*' : ''}`)
		.join(' ');
}

/** Writes a consistent copy of the database into a new file that only its owner can read. */
export function copyDatabase(engine: Engine, file: string): void {
	try {
		closeSync(openSync(file, 'wx', 0o600));
	} catch (error) {
		throw new FileRefusedError(file, error);
	}
	translateErrors(file, () => engine.database.prepare('VACUUM INTO ?').run(file));
}
