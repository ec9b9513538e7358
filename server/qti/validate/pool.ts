import { availableParallelism } from 'node:os';
import { makePool } from '../../worker-pool.ts';
import type { Answers, Job } from './validation-worker.ts';

/** Validation cannot go on because its worker broke; nothing is known about the documents. */
export class ValidationBrokenError extends Error {
	readonly code = 'validation-broken';

	constructor(cause: unknown) {
		super(`the validation worker stopped: ${String(cause)}`, { cause });
		this.name = 'ValidationBrokenError';
	}
}

/** How many jobs run at once. */
export const poolSize: number = Math.max(1, Math.min(2, availableParallelism()));

// What a worker makes lives for one item; room for sixteen megabytes of it takes no longer than the usual 48, and 50 less of memory.
const limits = { maxYoungGenerationSizeMb: 16 };

const pool = makePool<Job>(
	'qti/validate/validation-worker',
	poolSize,
	(cause: unknown) => new ValidationBrokenError(cause),
	limits,
);

/**
 * Has a job done by a worker. Workers stay for the life of the process, so that schemas are compiled once, and let the
 * process end when they are idle. Throws {@link ValidationBrokenError}.
 */
export function runJob<K extends Job['kind']>(job: Extract<Job, { kind: K }>): Promise<Answers[K]> {
	return pool.run<Answers[K]>(job);
}

/** Ends all workers; jobs under way are rejected. The next job starts new ones. */
export function closeValidation(): Promise<void> {
	return pool.close();
}
