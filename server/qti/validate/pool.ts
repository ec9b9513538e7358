import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { workerFile } from '../../worker-file.ts';
import type { Answers, Job, Reply, Request } from './validation-worker.ts';

interface Waiting {
	readonly request: Request;
	readonly resolve: (answer: never) => void;
	readonly reject: (cause: unknown) => void;
}

interface Member {
	readonly worker: Worker;
	job: Waiting | undefined;
}

/** Validation cannot go on because its worker broke; nothing is known about the documents. */
export class ValidationBrokenError extends Error {
	readonly code = 'validation-broken';

	constructor(cause: unknown) {
		super(`the validation worker stopped: ${String(cause)}`, { cause });
		this.name = 'ValidationBrokenError';
	}
}

const members = new Set<Member>();
const queue: Waiting[] = [];
let lastId = 0;

/** How many jobs run at once. */
export const poolSize: number = Math.max(1, Math.min(2, availableParallelism()));

/**
 * Has a job done by a worker. Workers stay for the life of the process, so that schemas are compiled once, and let the
 * process end when they are idle. Throws {@link ValidationBrokenError}.
 */
export function runJob<K extends Job['kind']>(job: Extract<Job, { kind: K }>): Promise<Answers[K]> {
	return new Promise<Answers[K]>((resolve, reject) => {
		lastId += 1;
		queue.push({ request: { id: lastId, job }, resolve, reject });
		assign();
	});
}

/** Ends all workers; jobs under way are rejected. The next job starts new ones. */
export async function closeValidation(): Promise<void> {
	await Promise.all([...members].map(({ worker }) => worker.terminate()));
}

function assign(): void {
	while (queue.length > 0) {
		const idle = [...members].find(({ job }) => !job) ?? (members.size < poolSize ? startMember() : undefined);
		const waiting = idle && queue.shift();
		if (!idle || !waiting) return;
		idle.job = waiting;
		idle.worker.ref();
		idle.worker.postMessage(waiting.request);
	}
}

function startMember(): Member {
	// No options of the process: some, such as --input-type, stop a worker from starting.
	const worker = new Worker(workerFile('qti/validate/validation-worker'), { execArgv: [] });
	const member: Member = { worker, job: undefined };
	member.worker.on('message', (reply: Reply) => {
		const { job } = member;
		member.job = undefined;
		member.worker.unref();
		if (job) settle(job, reply);
		assign();
	});
	let cause: unknown = 'it was ended';
	member.worker.on('error', (error) => {
		cause = error;
	});
	member.worker.on('exit', () => {
		members.delete(member);
		member.job?.reject(new ValidationBrokenError(cause));
		assign();
	});
	members.add(member);
	return member;
}

function settle(job: Waiting, reply: Reply): void {
	if ('failure' in reply) job.reject(reply.failure);
	else job.resolve(reply.answer as never);
}
