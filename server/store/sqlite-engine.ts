import { closeSync, openSync } from 'node:fs';
import Database from 'better-sqlite3';
import {
	CompiledQuery,
	type DatabaseConnection,
	type Dialect,
	type Driver,
	Kysely,
	type QueryResult,
	SqliteAdapter,
	SqliteIntrospector,
	SqliteQueryCompiler,
	sql,
	type TransactionSettings,
} from 'kysely';
import {
	DataFolderUnwritableError,
	DiskFullError,
	FileRefusedError,
	StoreBusyError,
	StoreDamagedError,
	StoreForeignError,
} from './storage-errors.ts';
import type { Tables } from './tables.ts';

/** Marks a SQLite file as a bank of this project ("Zero" in ASCII). */
export const applicationId = 0x5a65726f;

/** An open SQLite database: kysely for the repositories, the raw handle for what only SQLite knows. */
export interface Engine {
	readonly kysely: Kysely<Tables>;
	readonly database: Database.Database;
}

/** Is told of a statement and its values before it runs. */
export type StatementListener = (text: string, values: readonly unknown[]) => void;

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

/** Whether an error is a clash with a unique or primary key. */
export function isUniqueClash(error: unknown): boolean {
	return (
		error instanceof Database.SqliteError &&
		(error.code === 'SQLITE_CONSTRAINT_PRIMARYKEY' || error.code === 'SQLITE_CONSTRAINT_UNIQUE')
	);
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

/** Kysely over one better-sqlite3 connection: keeps prepared statements, begins writing transactions with the write lock, translates errors. */
class SyncedDialect implements Dialect {
	readonly #database: Database.Database;
	readonly #file: string;
	readonly #onStatement: StatementListener | undefined;

	constructor(database: Database.Database, file: string, onStatement?: StatementListener) {
		this.#database = database;
		this.#file = file;
		this.#onStatement = onStatement;
	}

	createDriver(): Driver {
		return new SyncedDriver(this.#database, this.#file, this.#onStatement);
	}

	createQueryCompiler(): SqliteQueryCompiler {
		return new SqliteQueryCompiler();
	}

	createAdapter(): SqliteAdapter {
		return new SqliteAdapter();
	}

	createIntrospector(kysely: Kysely<unknown>): SqliteIntrospector {
		return new SqliteIntrospector(kysely);
	}
}

class SyncedDriver implements Driver {
	readonly #database: Database.Database;
	readonly #connection: SyncedConnection;
	#queue: Promise<void> = Promise.resolve();
	#release: () => void = () => undefined;

	constructor(database: Database.Database, file: string, onStatement?: StatementListener) {
		this.#database = database;
		this.#connection = new SyncedConnection(database, file, onStatement);
	}

	async init(): Promise<void> {}

	/** One unit of work at a time, in the order they were asked for. */
	async acquireConnection(): Promise<DatabaseConnection> {
		const before = this.#queue;
		let release: () => void = () => undefined;
		this.#queue = new Promise((resolve) => {
			release = resolve;
		});
		await before;
		this.#release = release;
		return this.#connection;
	}

	async releaseConnection(): Promise<void> {
		this.#release();
	}

	async beginTransaction(connection: DatabaseConnection, settings: TransactionSettings): Promise<void> {
		// A deferred begin would meet a second writer only at its first write, when waiting no longer helps.
		const begin = settings.accessMode === 'read only' ? 'BEGIN' : 'BEGIN IMMEDIATE';
		await connection.executeQuery(CompiledQuery.raw(begin));
	}

	async commitTransaction(connection: DatabaseConnection): Promise<void> {
		await connection.executeQuery(CompiledQuery.raw('COMMIT'));
	}

	async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
		// SQLite undoes the transaction itself when the disk is full.
		if (this.#database.inTransaction) await connection.executeQuery(CompiledQuery.raw('ROLLBACK'));
	}

	async destroy(): Promise<void> {
		this.#database.close();
	}
}

class SyncedConnection implements DatabaseConnection {
	readonly #database: Database.Database;
	readonly #file: string;
	readonly #onStatement: StatementListener | undefined;
	readonly #statements = new Map<string, Database.Statement>();

	constructor(database: Database.Database, file: string, onStatement?: StatementListener) {
		this.#database = database;
		this.#file = file;
		this.#onStatement = onStatement;
	}

	async executeQuery<R>(query: CompiledQuery): Promise<QueryResult<R>> {
		this.#onStatement?.(query.sql, query.parameters);
		return translateErrors(this.#file, () => {
			const statement = this.#prepare(query.sql);
			if (statement.reader) return { rows: statement.all(query.parameters) as R[] };
			const { changes } = statement.run(query.parameters);
			return { rows: [], numAffectedRows: BigInt(changes) };
		});
	}

	// biome-ignore lint/correctness/useYield: a stream has no use here, but the interface asks for the method
	async *streamQuery<R>(): AsyncIterableIterator<QueryResult<R>> {
		throw new Error('queries are answered whole');
	}

	#prepare(text: string): Database.Statement {
		const known = this.#statements.get(text);
		if (known) return known;
		const statement = this.#database.prepare(text);
		if (this.#statements.size >= 500) this.#statements.clear();
		this.#statements.set(text, statement);
		return statement;
	}
}
