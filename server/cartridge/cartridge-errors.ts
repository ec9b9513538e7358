import type { Problem } from '../../item-bank/problem.ts';

/** A form with items that a cartridge does not carry as they are, and no word on what to do with them. Nothing was written. */
export class NotCarriedError extends Error {
	readonly code = 'export-not-carried';
	/** One for each item, with what it could become; paths lead into the form. */
	readonly problems: readonly Problem[];

	constructor(problems: readonly Problem[]) {
		const count = problems.length === 1 ? 'one item' : `${problems.length} items`;
		super(
			`expected items that Common Cartridge 1.1 carries, found ${count} of other kinds: choose to convert them (--convert, or "convert") or to leave them out (--leave-out, or "leaveOut")`,
		);
		this.name = 'NotCarriedError';
		this.problems = problems;
	}
}
