import { mkdirSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

/**
 * Makes a folder and those above it where they are not there, open to their owner alone. Folder by folder, because
 * mkdir with "recursive" never returns on file systems that refuse new folders as not found, such as /proc (seen with
 * Node 20). Throws the error of the file system.
 */
export function makeFolder(folder: string): void {
	if (isFolder(folder)) return;
	const above = dirname(resolve(folder));
	if (above !== resolve(folder)) makeFolder(above);
	try {
		mkdirSync(folder, { mode: 0o700 });
	} catch (error) {
		// Somebody else may have made it meanwhile.
		if (!isFolder(folder)) throw error;
	}
}

function isFolder(folder: string): boolean {
	return statSync(folder, { throwIfNoEntry: false })?.isDirectory() ?? false;
}
