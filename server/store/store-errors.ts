import type { Problem } from '../../item-bank/problem.ts';

/** What the store is asked to keep, as error messages name it. */
export type Subject = 'item' | 'form' | 'group' | 'blueprint' | 'sitting' | 'student';

/** An operation the store cannot carry out. `code` is permanent; `problems` are the faults of the content, if that is why. */
export abstract class StoreError extends Error {
	abstract readonly code: string;
	readonly problems: readonly Problem[] = [];

	constructor(message: string, cause?: unknown) {
		super(message, cause === undefined ? undefined : { cause });
		this.name = new.target.name;
	}
}

/** The bank holds nothing under this id, or not in this version. */
export class NotFoundError extends StoreError {
	readonly code = 'not-found';
	readonly subject: Subject;
	readonly id: string;

	constructor(subject: Subject, id: string, version?: number) {
		super(
			`expected ${article(subject)} of the bank, found none with id "${id}"${version ? ` in version ${version}` : ''}`,
		);
		this.subject = subject;
		this.id = id;
	}
}

/** The id is already in use. */
export class IdTakenError extends StoreError {
	readonly code = 'id-taken';
	readonly id: string;

	constructor(subject: Subject, id: string) {
		super(`expected a new id, but ${article(subject)} with id "${id}" is already in the bank`);
		this.id = id;
	}
}

/** Somebody else made a newer version in between. */
export class VersionConflictError extends StoreError {
	readonly code = 'version-conflict';
	readonly id: string;
	/** The version the change was based on. */
	readonly base: number;
	/** The newest version in the bank. */
	readonly newest: number;

	constructor(subject: Subject, id: string, base: number, newest: number) {
		super(
			`the change to ${subject} "${id}" is based on version ${base}, but the newest is version ${newest}: look at it and change that one`,
		);
		this.id = id;
		this.base = base;
		this.newest = newest;
	}
}

/** The content does not fit its schema, or breaks a rule that even a draft has to keep. */
export class ContentRefusedError extends StoreError {
	readonly code = 'content-refused';
	override readonly problems: readonly Problem[];

	constructor(subject: Subject, problems: readonly Problem[]) {
		super(`this ${subject} cannot be kept: ${problems[0]?.message ?? ''}${more(problems)}`);
		this.problems = problems;
	}
}

/** A check still speaks against approval. */
export class ItemNotApprovableError extends StoreError {
	readonly code = 'item-not-approvable';
	readonly id: string;
	readonly version: number;
	override readonly problems: readonly Problem[];

	constructor(id: string, version: number, problems: readonly Problem[]) {
		super(`item "${id}" version ${version} cannot be approved: ${problems[0]?.message ?? ''}${more(problems)}`);
		this.id = id;
		this.version = version;
		this.problems = problems;
	}
}

/** The status of a version does not allow this step: drafts can be approved or retired, approved versions retired. */
export class StatusRefusedError extends StoreError {
	readonly code = 'status-refused';
	readonly id: string;
	readonly status: string;

	constructor(id: string, version: number, status: string, step: 'approved' | 'retired') {
		super(`expected a version that can still be ${step}, found item "${id}" version ${version}, which is ${status}`);
		this.id = id;
		this.status = status;
	}
}

/** The same form was already recorded as given to this group on this date. */
export class AlreadyGivenError extends StoreError {
	readonly code = 'already-given';

	constructor(form: string, version: number, group: string, date: string) {
		super(`form "${form}" version ${version} is already recorded as given to group "${group}" on ${date}`);
	}
}

/** Another group has this name. */
export class GroupNameTakenError extends StoreError {
	readonly code = 'group-name-taken';

	constructor(name: string) {
		super(`expected a new name, but a group named "${name}" is already in the bank`);
	}
}

/** The mark of where a page ended was not made by this bank for this order. */
export class CursorRefusedError extends StoreError {
	readonly code = 'cursor-refused';

	constructor(cursor: string) {
		super(`expected the "next" of the page before in the same order, found "${cursor}"`);
	}
}

/** A search names a standard the bank does not know. */
export class UnknownStandardError extends StoreError {
	readonly code = 'unknown-standard';
	/** Codes spelled most like it. */
	readonly near: readonly string[];

	constructor(framework: string, edition: string, code: string | undefined, near: readonly string[]) {
		const hint = near.length === 0 ? '' : `; did you mean ${near.join(' or ')}?`;
		super(
			code === undefined
				? `expected a framework and edition the bank knows, found "${framework} ${edition}"${hint}`
				: `expected a code of ${framework} ${edition}, found "${code}"${hint}`,
		);
		this.near = near;
	}
}

function article(subject: Subject): string {
	return subject === 'item' ? 'an item' : `a ${subject}`;
}

function more(problems: readonly Problem[]): string {
	return problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
}
