import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import Database from 'better-sqlite3';
import type { PurgedPlace, PurgeReport } from '../../item-bank/types.ts';
import { applicationId, type Engine } from './sqlite-engine.ts';
import { translateErrors } from './sqlite-errors.ts';
import { NotFoundError } from './store-errors.ts';

/** What is to go: a sitting with all its responses, or everything under a student code. */
export type PurgeTarget = { readonly sitting: string } | { readonly student: string };

interface Counts {
	readonly sittings: number;
	readonly students: number;
	readonly answers: number;
}

/**
 * Deletes for good: from the bank, from every backup it knows of and those named, and from banks kept before a restore. Deleted
 * bytes are overwritten, then each file is written anew without free pages and its write-ahead log is emptied. What file systems
 * and disks keep of overwritten blocks is out of reach. Backups that are gone or cannot be opened are reported. Throws
 * NotFoundError when the bank holds nothing of it, unless a backup named does.
 */
export function purge(
	engine: Engine,
	file: string,
	target: PurgeTarget,
	named: readonly string[],
	at: string,
): PurgeReport {
	const { database } = engine;
	const known = database.prepare('SELECT file FROM backups ORDER BY file').pluck().all() as string[];
	const others = [...new Set([...known, ...named.map((each) => resolve(each)), ...keptBeside(file)])];
	const counts = translateErrors(file, () => deleteFrom(database, target, at));
	const places: PurgedPlace[] = [];
	// Also where nothing was found: an earlier purge may have been kept from cleaning by another program.
	const why = translateErrors(file, () => cleanPages(database));
	const name = file === ':memory:' ? 'memory' : basename(file);
	if (why !== undefined) places.push({ file: name, found: 'refused', why });
	else if (counts !== undefined) places.push({ file: name, found: 'purged' });
	for (const other of others) places.push(purgeCopy(other, target, at));
	if (counts === undefined && places.every(({ found }) => found === 'nothing' || found === 'missing')) {
		throw 'sitting' in target
			? new NotFoundError('sitting', target.sitting)
			: new NotFoundError('student', target.student);
	}
	// Files that are gone need not be looked for again.
	const forget = database.prepare('DELETE FROM backups WHERE file = ?');
	for (const { file: gone, found } of places) if (found === 'missing') forget.run(gone);
	return { ...(counts ?? { sittings: 0, students: 0, answers: 0 }), places };
}

/** Banks that a restore put aside in the same folder. */
function keptBeside(file: string): readonly string[] {
	if (file === ':memory:') return [];
	const folder = dirname(file);
	return readdirSync(folder)
		.filter((name) => name.startsWith(`${basename(file)}.before-restore-`) && !/-(wal|shm|journal)$/.test(name))
		.map((name) => resolve(join(folder, name)));
}

function purgeCopy(file: string, target: PurgeTarget, at: string): PurgedPlace {
	if (!existsSync(file)) return { file, found: 'missing' };
	let database: Database.Database | undefined;
	try {
		database = new Database(file, { fileMustExist: true, timeout: 2000 });
		if (database.pragma('application_id', { simple: true }) !== applicationId)
			throw new Error('not a bank of Zeropair');
		const hasSittings = database.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'sittings'").get() !== undefined;
		database.pragma('foreign_keys = ON');
		const counts = hasSittings ? deleteFrom(database, target, at) : deleteFromGroups(database, target);
		if (counts === undefined) return { file, found: 'nothing' };
		const why = cleanPages(database);
		if (why !== undefined) return { file, found: 'refused', why };
		database.pragma('journal_mode = DELETE');
		return { file, found: 'purged' };
	} catch (error) {
		return { file, found: 'refused', why: error instanceof Error ? error.message : String(error) };
	} finally {
		database?.close();
	}
}

/** Backups from before there were sittings hold student codes in groups only. */
function deleteFromGroups(database: Database.Database, target: PurgeTarget): Counts | undefined {
	if ('sitting' in target) return undefined;
	database.pragma('secure_delete = ON');
	const { changes } = database.prepare('DELETE FROM group_students WHERE code = ?').run(target.student);
	return changes === 0 ? undefined : { sittings: 0, students: changes, answers: 0 };
}

function deleteFrom(database: Database.Database, target: PurgeTarget, at: string): Counts | undefined {
	database.pragma('secure_delete = ON');
	return database
		.transaction(() =>
			'sitting' in target ? deleteSitting(database, target.sitting, at) : deleteStudent(database, target.student, at),
		)
		.immediate();
}

function deleteSitting(database: Database.Database, id: string, at: string): Counts | undefined {
	const count = (text: string): number => Number(database.prepare(text).pluck().get(id));
	const students = count('SELECT count(*) FROM sitting_students WHERE sitting_id = ?');
	const answers = count('SELECT count(*) FROM responses JOIN sitting_students ON id = student WHERE sitting_id = ?');
	const { changes } = database.prepare('DELETE FROM sittings WHERE id = ?').run(id);
	if (changes === 0) return undefined;
	note(database, id, at);
	return { sittings: 1, students, answers };
}

function deleteStudent(database: Database.Database, code: string, at: string): Counts | undefined {
	const sittings = database
		.prepare('SELECT sitting_id FROM sitting_students WHERE code = ?')
		.pluck()
		.all(code) as string[];
	const answers = Number(
		database
			.prepare('SELECT count(*) FROM responses JOIN sitting_students ON id = student WHERE code = ?')
			.pluck()
			.get(code),
	);
	database.prepare('DELETE FROM sitting_students WHERE code = ?').run(code);
	const groups = database.prepare('DELETE FROM group_students WHERE code = ?').run(code).changes;
	if (sittings.length === 0 && groups === 0) return undefined;
	for (const id of sittings) note(database, id, at);
	return { sittings: sittings.length, students: 1, answers };
}

/** That something was purged, and nothing of what. */
function note(database: Database.Database, id: string, at: string): void {
	database
		.prepare(
			"INSERT INTO happenings (subject, subject_id, version, what, at, by) VALUES ('sitting', ?, NULL, 'purged', ?, NULL)",
		)
		.run(id, at);
}

/** Writes the file anew without free pages, and empties the write-ahead log. Says why that could not be done. */
function cleanPages(database: Database.Database): string | undefined {
	database.exec('VACUUM');
	const [log] = database.pragma('wal_checkpoint(TRUNCATE)') as readonly { readonly busy: number }[];
	if (log?.busy !== 1) return undefined;
	return 'another program is reading it, so old pages stay in the write-ahead log: close it and purge again';
}
