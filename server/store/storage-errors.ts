import { StoreError } from './store-errors.ts';

/** Folder or database file cannot be made, read or written. */
export class DataFolderUnwritableError extends StoreError {
	readonly code = 'data-folder-unwritable';
	readonly folder: string;

	constructor(folder: string, cause?: unknown) {
		super(`expected a folder this account can write to, found "${folder}"${reason(cause)}`, cause);
		this.folder = folder;
	}
}

/** The folder is open to other accounts and holds other things, so the bank neither closes it nor moves in. */
export class DataFolderSharedError extends StoreError {
	readonly code = 'data-folder-shared';
	readonly folder: string;

	constructor(folder: string) {
		super(
			`expected an empty folder or one of the bank's own, found "${folder}", which holds other files and is open to other accounts`,
		);
		this.folder = folder;
	}
}

/** The database was written by a newer Zeropair. */
export class StoreNewerError extends StoreError {
	readonly code = 'store-newer';
	/** Number of the newest migration in the database. */
	readonly found: number;
	/** Number of the newest migration known here. */
	readonly known: number;

	constructor(found: number, known: number) {
		super(
			`expected a bank up to migration ${known}, found one at migration ${found}: it was written by a newer Zeropair, so use that one`,
		);
		this.found = found;
		this.known = known;
	}
}

/** The file is not a database of this bank. */
export class StoreForeignError extends StoreError {
	readonly code = 'store-foreign';
	readonly file: string;

	constructor(file: string, cause?: unknown) {
		super(`expected a bank written by Zeropair, found something else in "${file}"`, cause);
		this.file = file;
	}
}

/** The database file is damaged. */
export class StoreDamagedError extends StoreError {
	readonly code = 'store-damaged';
	/** What the integrity check found. */
	readonly finding: string;

	constructor(file: string, finding: string, cause?: unknown) {
		super(`the bank in "${file}" is damaged (${finding}): restore a backup`, cause);
		this.finding = finding;
	}
}

/** Another program kept the database locked for longer than the time to wait. */
export class StoreBusyError extends StoreError {
	readonly code = 'store-busy';

	constructor(cause?: unknown) {
		super('another program is using the bank: nothing was changed, try again in a moment', cause);
	}
}

/** No room is left on the disk; the unit of work was undone. */
export class DiskFullError extends StoreError {
	readonly code = 'disk-full';

	constructor(cause?: unknown) {
		super('the disk is full: nothing was changed, make room and try again', cause);
	}
}

/** A file that would be overwritten. */
export class FileExistsError extends StoreError {
	readonly code = 'file-exists';
	readonly file: string;

	constructor(file: string) {
		super(`expected a new file name, but "${file}" is already there`);
		this.file = file;
	}
}

/** A file that cannot be read or written. */
export class FileRefusedError extends StoreError {
	readonly code = 'file-refused';
	readonly file: string;

	constructor(file: string, cause?: unknown) {
		super(`expected a file this account can use, found "${file}"${reason(cause)}`, cause);
		this.file = file;
	}
}

function reason(cause: unknown): string {
	const code = cause instanceof Error && 'code' in cause ? String(cause.code) : undefined;
	return code === undefined ? '' : ` (${code})`;
}
