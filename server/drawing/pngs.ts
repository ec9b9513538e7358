import { Worker } from 'node:worker_threads';
import { workerFile } from '../worker-file.ts';
import type { PngResult, PngTask } from './png-worker.ts';

const threads = 2;
/** Tasks a thread holds at a time: one to draw and one to go on with while the answer travels. */
const ahead = 2;

/** A batch of pictures that broke off at one of them. */
export class PictureBatchError extends Error {
	readonly code = 'picture-batch-failed';
	/** Place in the list of the SVG document that failed; undefined when a thread died. */
	readonly index: number | undefined;

	constructor(index: number | undefined, reason: string) {
		super(index === undefined ? `a drawing thread stopped: ${reason}` : `picture ${index + 1} failed: ${reason}`);
		this.name = 'PictureBatchError';
		this.index = index;
	}
}

/**
 * Turns SVG documents into PNGs as renderPng does, on two threads, and returns them in the order given. `onProgress` hears
 * of each finished picture. Rejects with the signal's reason when aborted, with {@link PictureBatchError} when a document
 * cannot be drawn; the threads have ended by then either way.
 */
export async function renderPngs(
	svgs: readonly string[],
	onProgress?: (done: number, total: number) => void,
	signal?: AbortSignal,
): Promise<readonly Uint8Array[]> {
	signal?.throwIfAborted();
	if (svgs.length === 0) return [];
	const file = workerFile('drawing/png-worker');
	const workers = Array.from({ length: Math.min(threads, svgs.length) }, () => new Worker(file));
	const ended = new AbortController();
	try {
		const aborted = new Promise<never>((_, reject) => {
			signal?.addEventListener('abort', () => reject(signal.reason), { once: true, signal: ended.signal });
		});
		return await Promise.race([aborted, runBatch(workers, svgs, onProgress)]);
	} finally {
		ended.abort();
		await Promise.all(workers.map((worker) => worker.terminate()));
	}
}

function runBatch(
	workers: readonly Worker[],
	svgs: readonly string[],
	onProgress: ((done: number, total: number) => void) | undefined,
): Promise<readonly Uint8Array[]> {
	return new Promise((resolve, reject) => {
		const pictures: Uint8Array[] = [];
		let next = 0;
		let done = 0;
		const give = (worker: Worker) => {
			const svg = svgs[next];
			if (svg === undefined) return;
			worker.postMessage({ index: next, svg } satisfies PngTask);
			next += 1;
		};
		const take = (worker: Worker, result: PngResult) => {
			if ('error' in result) {
				reject(new PictureBatchError(result.index, result.error));
				return;
			}
			pictures[result.index] = result.png;
			done += 1;
			give(worker);
			try {
				onProgress?.(done, svgs.length);
			} catch (error) {
				reject(error);
			}
			if (done === svgs.length) resolve(pictures);
		};
		for (const worker of workers) {
			worker.on('message', (result: PngResult) => take(worker, result));
			worker.on('error', (error) => reject(new PictureBatchError(undefined, String(error))));
			worker.on('exit', (code) => reject(new PictureBatchError(undefined, `exit code ${code}`)));
			for (let tasks = 0; tasks < ahead; tasks += 1) give(worker);
		}
	});
}
