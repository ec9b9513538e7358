import type { Problem } from '../../item-bank/problem.ts';
import type { RejectedRow } from '../../item-bank/types.ts';

/** A file of responses that cannot be read at all; nothing was changed. */
export class ResultFileError extends Error {
	readonly code: string;
	readonly problems: readonly Problem[];

	constructor(code: string, message: string, problems: readonly Problem[] = []) {
		super(message);
		this.name = 'ResultFileError';
		this.code = code;
		this.problems = problems;
	}
}

/** Turns rejected rows into problems whose path is the line. */
export function problemsOfRows(rejected: readonly RejectedRow[]): readonly Problem[] {
	return rejected.map(({ line, code, message }) => ({ code, path: `/line/${line}`, message }));
}
