import type { Problem } from '../item-bank/problem.ts';

/** A request the service does not answer, with the HTTP status that says so. */
export class RequestError extends Error {
	readonly code: string;
	readonly status: number;
	readonly problems: readonly Problem[];

	constructor(facts: {
		readonly code: string;
		readonly status: number;
		readonly message: string;
		readonly problems?: readonly Problem[];
	}) {
		super(facts.message);
		this.name = 'RequestError';
		this.code = facts.code;
		this.status = facts.status;
		this.problems = facts.problems ?? [];
	}
}
