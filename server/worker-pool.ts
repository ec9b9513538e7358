import { type ResourceLimits, Worker } from 'node:worker_threads';
import { workerFile } from './worker-file.ts';

/** What a worker is told: a number to answer with, and the job. */
export interface PoolRequest<J> {
	readonly id: number;
	readonly job: J;
}

/** What a worker answers: the answer, or why there is none. */
export type PoolReply<A> =
	| { readonly id: number; readonly answer: A }
	| { readonly id: number; readonly failure: unknown };

/** Workers that do jobs one after another. */
export interface WorkerPool<J> {
	/** How many jobs run at once. */
	readonly size: number;
	/** Has a job done. Rejects with what the worker failed with, or what `broken` makes of a worker that stopped. */
	readonly run: <A>(job: J) => Promise<A>;
	/** Ends all workers; jobs under way are rejected. The next job starts new ones. */
	readonly close: () => Promise<void>;
}

interface Waiting<J> {
	readonly request: PoolRequest<J>;
	readonly resolve: (answer: never) => void;
	readonly reject: (cause: unknown) => void;
}

interface Member<J> {
	readonly worker: Worker;
	job: Waiting<J> | undefined;
}

/**
 * A pool of workers of one script, named as for workerFile. Workers stay for the life of the process, so that what they compile
 * is compiled once, and let the process end when they are idle.
 */
export function makePool<J>(
	script: string,
	size: number,
	broken: (cause: unknown) => Error,
	resourceLimits: ResourceLimits = {},
): WorkerPool<J> {
	const members = new Set<Member<J>>();
	const queue: Waiting<J>[] = [];
	let lastId = 0;

	const assign = (): void => {
		while (queue.length > 0) {
			const idle = [...members].find(({ job }) => !job) ?? (members.size < size ? start() : undefined);
			const waiting = idle && queue.shift();
			if (!idle || !waiting) return;
			idle.job = waiting;
			idle.worker.ref();
			idle.worker.postMessage(waiting.request);
		}
	};

	const start = (): Member<J> => {
		// No options of the process: some, such as --input-type, stop a worker from starting.
		const worker = new Worker(workerFile(script), { execArgv: [], resourceLimits });
		const member: Member<J> = { worker, job: undefined };
		worker.on('message', (reply: PoolReply<unknown>) => {
			const { job } = member;
			member.job = undefined;
			worker.unref();
			if (job) settle(job, reply);
			assign();
		});
		let cause: unknown = 'it was ended';
		worker.on('error', (error) => {
			cause = error;
		});
		worker.on('exit', () => {
			members.delete(member);
			member.job?.reject(broken(cause));
			assign();
		});
		members.add(member);
		return member;
	};

	return {
		size,
		run: <A>(job: J): Promise<A> =>
			new Promise<A>((resolve, reject) => {
				lastId += 1;
				queue.push({ request: { id: lastId, job }, resolve, reject });
				assign();
			}),
		close: async () => {
			await Promise.all([...members].map(({ worker }) => worker.terminate()));
		},
	};
}

function settle<J>(job: Waiting<J>, reply: PoolReply<unknown>): void {
	if ('failure' in reply) job.reject(reply.failure);
	else job.resolve(reply.answer as never);
}
