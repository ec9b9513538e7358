import { Worker } from 'node:worker_threads';
import type { BuildAnswer } from '../../item-bank/types.ts';
import { workerFile } from '../worker-file.ts';
import { type BuildProgress, type BuildRequest, BuildRequestError } from './build-request.ts';
import type { BuildNews } from './build-worker.ts';

/** A build that broke off; nothing is known about the forms. */
export class BuildBrokenError extends Error {
	readonly code = 'build-broken';

	constructor(cause: unknown) {
		super(`the build stopped: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
		this.name = 'BuildBrokenError';
	}
}

/** What a caller may hear and stop. */
export interface BuildOptions {
	readonly onProgress?: (progress: BuildProgress) => void;
	/** Aborting ends the thread at once; the promise rejects with the signal's reason. */
	readonly signal?: AbortSignal;
}

/**
 * Builds forms in a thread of its own, so that builds do not wait for each other. The same request gives the same answer on
 * any machine. Rejects with {@link BuildRequestError} for a request that no search can answer, with the signal's reason when
 * aborted and with {@link BuildBrokenError} when the thread fails; the thread has ended by then either way.
 */
export async function buildForms(
	request: BuildRequest,
	{ onProgress, signal }: BuildOptions = {},
): Promise<BuildAnswer> {
	signal?.throwIfAborted();
	const worker = new Worker(workerFile('assembly/build-worker'), { workerData: request });
	const ended = new AbortController();
	try {
		return await new Promise<BuildAnswer>((resolve, reject) => {
			signal?.addEventListener('abort', () => reject(signal.reason), { once: true, signal: ended.signal });
			worker.on('message', (news: BuildNews) => {
				switch (news.kind) {
					case 'progress':
						try {
							onProgress?.(news.progress);
						} catch (error) {
							reject(error);
						}
						return;
					case 'answer':
						resolve(news.answer);
						return;
					case 'refused':
						reject(new BuildRequestError(news.message));
						return;
					case 'failed':
						reject(new BuildBrokenError(news.cause));
						return;
					default:
						news satisfies never;
				}
			});
			worker.on('error', (error) => reject(new BuildBrokenError(error)));
			worker.on('exit', (code) => reject(new BuildBrokenError(`exit code ${code}`)));
		});
	} finally {
		ended.abort();
		await worker.terminate();
	}
}
