import { parentPort, workerData } from 'node:worker_threads';
import { invariant } from '../../item-bank/invariant.ts';
import type { BuildAnswer } from '../../item-bank/types.ts';
import { buildHere } from './build-here.ts';
import { type BuildProgress, type BuildRequest, BuildRequestError } from './build-request.ts';
import { loadSolver } from './solver.ts';

/** What a building thread sends: how far it is, and last the answer or why there is none. */
export type BuildNews =
	| { readonly kind: 'progress'; readonly progress: BuildProgress }
	| { readonly kind: 'answer'; readonly answer: BuildAnswer }
	| { readonly kind: 'refused'; readonly message: string }
	| { readonly kind: 'failed'; readonly cause: unknown };

const port = parentPort;
invariant(port, 'this file runs as a worker thread');
const send = (news: BuildNews): void => port.postMessage(news);
try {
	const solver = await loadSolver();
	const answer = buildHere(workerData as BuildRequest, solver, (progress) => send({ kind: 'progress', progress }));
	send({ kind: 'answer', answer });
} catch (cause) {
	send(cause instanceof BuildRequestError ? { kind: 'refused', message: cause.message } : { kind: 'failed', cause });
}
