/** Why there is no integer value in the bank, with the numbers met. */
export interface EvaluationFacts {
	readonly code:
		| 'expression-inexact-division'
		| 'expression-zero-division'
		| 'expression-out-of-range'
		| 'expression-unknown'
		| 'expression-unsolvable';
	/** The numbers of the operation that failed, left then right; otherwise the numbers at hand. */
	readonly operands: readonly number[];
	/** The operation, expression or statement that failed, printed. */
	readonly printed: string;
	/** What was expected and what was found. */
	readonly reason: string;
}

/** Thrown when an expression, or the unknown of a statement, has no value among the integers from −999,999 to 999,999. */
export class EvaluationError extends Error {
	readonly code: EvaluationFacts['code'];
	readonly operands: readonly number[];
	readonly printed: string;

	constructor(facts: EvaluationFacts) {
		super(`${facts.reason} in "${facts.printed}"`);
		this.name = 'EvaluationError';
		this.code = facts.code;
		this.operands = facts.operands;
		this.printed = facts.printed;
	}
}
