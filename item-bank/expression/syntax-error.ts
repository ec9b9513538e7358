/** What was wrong with a typed expression and where. */
export interface SyntaxFacts {
	/** The text as typed. */
	readonly text: string;
	/** Index of the first character that does not fit, 0-based, in UTF-16 units; the length of the text for its end. */
	readonly position: number;
	readonly expected: string;
	readonly found: string;
}

/** Thrown when a text is not an expression or statement of the bank. */
export class ExpressionSyntaxError extends Error {
	readonly code = 'expression-syntax';
	readonly text: string;
	readonly position: number;
	readonly expected: string;
	readonly found: string;

	constructor(facts: SyntaxFacts) {
		const shown = facts.text.length > 60 ? `${facts.text.slice(0, 60)}…` : facts.text;
		super(`expected ${facts.expected}, found ${facts.found} at position ${facts.position} of "${shown}"`);
		this.name = 'ExpressionSyntaxError';
		this.text = facts.text;
		this.position = facts.position;
		this.expected = facts.expected;
		this.found = facts.found;
	}
}
