import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../project-root.ts';
import { applicationId, type Engine } from './sqlite-engine.ts';
import { translateErrors } from './sqlite-errors.ts';
import { StoreForeignError, StoreNewerError } from './storage-errors.ts';

/** One step of the database's shape: a numbered file that is never edited once released. */
export interface Migration {
	readonly number: number;
	readonly name: string;
	readonly text: string;
}

/** All migrations in order, read from server/store/migrations. */
export function readMigrations(folder: string = join(projectRoot, 'server/store/migrations')): readonly Migration[] {
	return readdirSync(folder)
		.filter((file) => /^\d{3}-[a-z0-9-]+\.sql$/.test(file))
		.sort()
		.map((file) => ({
			number: Number(file.slice(0, 3)),
			name: file.slice(4, -4),
			text: readFileSync(join(folder, file), 'utf8'),
		}));
}

/** Number of the newest migration a database has seen, 0 for an empty one. Throws StoreForeignError for a file that is not ours. */
export function readStoreVersion(database: Engine['database'], file: string): number {
	const tables = translateErrors(file, () =>
		database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all(),
	);
	if (tables.length === 0) return 0;
	const isOurs = database.pragma('application_id', { simple: true }) === applicationId && tables.includes('migrations');
	if (!isOurs) throw new StoreForeignError(file);
	return Number(database.prepare('SELECT max(number) FROM migrations').pluck().get() ?? 0);
}

/**
 * Brings a database up to the newest migration; each step is one transaction together with its row in the table of steps
 * done. Throws StoreNewerError for a database that is ahead.
 */
export function migrateStore(
	database: Engine['database'],
	file: string,
	clock: () => Date,
	migrations: readonly Migration[] = readMigrations(),
): void {
	const known = migrations.at(-1)?.number ?? 0;
	const found = readStoreVersion(database, file);
	if (found > known) throw new StoreNewerError(found, known);
	if (found === known) return;
	for (const migration of migrations) {
		const step = database.transaction(() => {
			// Read again under the lock: another program may have come first.
			if (readStoreVersion(database, file) >= migration.number) return;
			database.pragma(`application_id = ${applicationId}`);
			database.exec(
				'CREATE TABLE IF NOT EXISTS migrations (number INTEGER PRIMARY KEY, name TEXT NOT NULL, done_at TEXT NOT NULL) STRICT',
			);
			database.exec(migration.text);
			database
				.prepare('INSERT INTO migrations (number, name, done_at) VALUES (?, ?, ?)')
				.run(migration.number, migration.name, clock().toISOString());
		});
		translateErrors(file, () => step.immediate());
	}
}
