import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { projectRoot } from './project-root.ts';

/** A worker that has not been built. */
export class WorkerFileError extends Error {
	readonly code = 'worker-not-built';
	readonly path: string;

	constructor(path: string) {
		super(`expected a built worker at ${path}, found none: run npm run build`);
		this.name = 'WorkerFileError';
		this.path = path;
	}
}

/**
 * Address of the built script of a worker thread, named as below server/ without extension, such as 'drawing/png-worker'.
 * Threads always run the build, because Node 20 cannot load TypeScript. Throws {@link WorkerFileError} before a build.
 */
export function workerFile(name: string): URL {
	const path = join(projectRoot, 'dist', 'server', `${name}.js`);
	if (!existsSync(path)) throw new WorkerFileError(path);
	return pathToFileURL(path);
}
