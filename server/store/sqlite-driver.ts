import type Database from 'better-sqlite3';
import {
	CompiledQuery,
	type DatabaseConnection,
	type Dialect,
	type Driver,
	type Kysely,
	type QueryResult,
	SqliteAdapter,
	SqliteIntrospector,
	SqliteQueryCompiler,
	type TransactionSettings,
} from 'kysely';
import { translateErrors } from './sqlite-errors.ts';

/** Is told of a statement and its values before it runs. */
export type StatementListener = (text: string, values: readonly unknown[]) => void;

/** Kysely over one better-sqlite3 connection: keeps prepared statements, begins writing transactions with the write lock, translates errors. */
export class SyncedDialect implements Dialect {
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
