import { parentPort } from 'node:worker_threads';
import { invariant } from '../../item-bank/invariant.ts';
import type { PoolReply, PoolRequest } from '../worker-pool.ts';
import {
	type CartridgeFrame,
	type QuestionBatch,
	type WrittenFrame,
	type WrittenQuestions,
	writeFrame,
	writeQuestions,
} from './cartridge-jobs.ts';

/** What a worker can be asked. */
export type CartridgeJob =
	| { readonly kind: 'questions'; readonly batch: QuestionBatch }
	| { readonly kind: 'frame'; readonly frame: CartridgeFrame };

/** The answer to a job of one kind. */
export interface CartridgeAnswers {
	readonly questions: WrittenQuestions;
	readonly frame: WrittenFrame;
}

const port = parentPort;
invariant(port, 'this file runs as a worker thread');
port.on('message', ({ id, job }: PoolRequest<CartridgeJob>) => {
	try {
		const answer = job.kind === 'questions' ? writeQuestions(job.batch) : writeFrame(job.frame);
		const moved = 'segment' in answer ? [answer.segment.bytes.buffer] : [];
		port.postMessage({ id, answer } satisfies PoolReply<WrittenQuestions | WrittenFrame>, moved);
	} catch (failure) {
		port.postMessage({ id, failure } satisfies PoolReply<never>);
	}
});
