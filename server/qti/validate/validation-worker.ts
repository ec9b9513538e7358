import { parentPort } from 'node:worker_threads';
import { invariant } from '../../../item-bank/invariant.ts';
import type { PoolReply, PoolRequest } from '../../worker-pool.ts';
import { type Frame, type WrittenFrame, writeFrame } from '../package/frame.ts';
import { type ItemBatch, type WrittenBatch, writeItemBatch } from '../package/item-batch.ts';
import type { PublishedSchema } from './published.ts';
import { getPublishedValidator } from './schema-set.ts';
import { type CheckedDocument, type DocumentFinding, validateDocument } from './validate-document.ts';

/** What a validation worker can be asked. */
export type Job =
	| { readonly kind: 'items'; readonly batch: ItemBatch }
	| { readonly kind: 'frame'; readonly frame: Frame }
	| { readonly kind: 'schema'; readonly published: PublishedSchema }
	| {
			readonly kind: 'documents';
			readonly documents: readonly CheckedDocument[];
			readonly published: PublishedSchema | undefined;
	  };

/** The answer to a job of one kind. */
export interface Answers {
	readonly items: WrittenBatch;
	readonly frame: WrittenFrame;
	readonly documents: readonly DocumentFinding[];
	/** Nothing: the schema compiled. */
	readonly schema: null;
}

const port = parentPort;
invariant(port, 'this file runs as a worker thread');
port.on('message', ({ id, job }: PoolRequest<Job>) => {
	try {
		const answer = answerJob(job);
		port.postMessage({ id, answer } satisfies PoolReply<Answers[keyof Answers]>, buffersOf(answer));
	} catch (failure) {
		port.postMessage({ id, failure } satisfies PoolReply<Answers[keyof Answers]>);
	}
});

function answerJob(job: Job): Answers[keyof Answers] {
	switch (job.kind) {
		case 'items':
			return writeItemBatch(job.batch);
		case 'frame':
			return writeFrame(job.frame);
		case 'schema':
			getPublishedValidator(job.published);
			return null;
		case 'documents':
			return job.documents.map((document) => validateDocument(document, job.published));
	}
}

/** Compressed files are handed over, not copied. */
function buffersOf(answer: Answers[keyof Answers]): ArrayBuffer[] {
	return answer && 'segment' in answer ? [answer.segment.bytes.buffer] : [];
}
