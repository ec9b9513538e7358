import {
	closeSync,
	existsSync,
	fsyncSync,
	linkSync,
	openSync,
	readFileSync,
	renameSync,
	rmSync,
	writeSync,
} from 'node:fs';
import { makeFolder as makeFolders } from '../make-folder.ts';
import { FileExistsError, FileRefusedError } from '../store/storage-errors.ts';

/** A file that should hold JSON and does not. */
export class FileMalformedError extends Error {
	readonly code = 'json-malformed';
	readonly file: string;

	constructor(file: string, cause: unknown) {
		super(`expected JSON in "${file}": ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
		this.name = 'FileMalformedError';
		this.file = file;
	}
}

/** Bytes of a file. Throws FileRefusedError. */
export function readBytes(file: string): Buffer {
	try {
		return readFileSync(file);
	} catch (error) {
		throw new FileRefusedError(file, error);
	}
}

/** Makes a folder and those above it where they are not there. Throws FileRefusedError. */
export function makeFolder(folder: string): void {
	try {
		makeFolders(folder);
	} catch (error) {
		throw new FileRefusedError(folder, error);
	}
}

/** The JSON document in a file. Throws FileRefusedError, {@link FileMalformedError}. */
export function readJson(file: string): unknown {
	const text = readBytes(file).toString('utf8');
	try {
		return JSON.parse(text.replace(/^\uFEFF/, ''));
	} catch (error) {
		throw new FileMalformedError(file, error);
	}
}

/** A file to be written. */
export interface NewFile {
	readonly file: string;
	readonly content: Uint8Array | string;
}

/** Refuses names that are taken, unless they may be replaced. Throws FileExistsError. */
export function checkFree(files: readonly string[], isReplacing: boolean): void {
	const taken = isReplacing ? undefined : files.find((file) => existsSync(file));
	if (taken !== undefined) throw new FileExistsError(taken);
}

/**
 * Writes files under temporary names beside their targets and only then gives them their names, so that an interruption
 * leaves no half file; only their owner can read them. When one cannot be given its name, those before it are taken back.
 * Throws FileExistsError, FileRefusedError.
 */
export function writeFiles(files: readonly NewFile[], isReplacing: boolean): void {
	const parts = files.map(({ file, content }) => ({ file, content, part: `${file}.part-${process.pid}` }));
	const placed: string[] = [];
	try {
		for (const { file, content, part } of parts) writePart(file, part, content);
		for (const { file, part } of parts) {
			giveName(part, file, isReplacing);
			placed.push(file);
		}
	} catch (error) {
		if (!isReplacing) for (const file of placed) rmSync(file, { force: true });
		throw error;
	} finally {
		for (const { part } of parts) rmSync(part, { force: true });
	}
}

function writePart(file: string, part: string, content: Uint8Array | string): void {
	try {
		const handle = openSync(part, 'wx', 0o600);
		try {
			const bytes = typeof content === 'string' ? Buffer.from(content) : content;
			for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
			fsyncSync(handle);
		} finally {
			closeSync(handle);
		}
	} catch (error) {
		throw new FileRefusedError(file, error);
	}
}

function giveName(part: string, file: string, isReplacing: boolean): void {
	try {
		// A rename would silently replace a file that came into being meanwhile; a link does not.
		if (!isReplacing && linkFile(part, file)) return;
		renameSync(part, file);
	} catch (error) {
		throw error instanceof FileExistsError ? error : new FileRefusedError(file, error);
	}
}

/** Whether the file system knows links; throws FileExistsError for a name that is taken. */
function linkFile(part: string, file: string): boolean {
	try {
		linkSync(part, file);
		return true;
	} catch (error) {
		const code = error instanceof Error && 'code' in error ? error.code : undefined;
		if (code === 'EEXIST') throw new FileExistsError(file);
		if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'EOPNOTSUPP' && code !== 'ENOSYS') throw error;
		checkFree([file], false);
		return false;
	}
}
