import { parentPort } from 'node:worker_threads';
import { invariant } from '../../item-bank/invariant.ts';
import type { PoolReply, PoolRequest } from '../worker-pool.ts';
import {
	type CartridgeFrame,
	type CheckedCartridge,
	checkCartridge,
	type QuestionBatch,
	type WrittenFrame,
	type WrittenQuestions,
	writeFrame,
	writeQuestions,
} from './cartridge-jobs.ts';

/** What a worker can be asked. */
export type CartridgeJob =
	| { readonly kind: 'questions'; readonly batch: QuestionBatch }
	| { readonly kind: 'frame'; readonly frame: CartridgeFrame }
	| { readonly kind: 'check'; readonly manifest: string; readonly assessment: string };

/** The answer to a job of one kind. */
export interface CartridgeAnswers {
	readonly questions: WrittenQuestions;
	readonly frame: WrittenFrame;
	readonly check: CheckedCartridge;
}

const port = parentPort;
invariant(port, 'this file runs as a worker thread');
port.on('message', ({ id, job }: PoolRequest<CartridgeJob>) => {
	try {
		const answer = answerJob(job);
		const moved = 'segment' in answer ? [answer.segment.bytes.buffer] : [];
		port.postMessage({ id, answer } satisfies PoolReply<CartridgeAnswers[keyof CartridgeAnswers]>, moved);
	} catch (failure) {
		port.postMessage({ id, failure } satisfies PoolReply<never>);
	}
});

function answerJob(job: CartridgeJob): CartridgeAnswers[keyof CartridgeAnswers] {
	switch (job.kind) {
		case 'questions':
			return writeQuestions(job.batch);
		case 'frame':
			return writeFrame(job.frame);
		case 'check':
			return checkCartridge(job.manifest, job.assessment);
	}
}
