import type { WritingStyle } from '../expression/layout.ts';
import { ExpressionSyntaxError, parseMathematics } from '../expression/parse.ts';
import { printMathematics } from '../expression/print.ts';
import { speakMathematics } from '../expression/speak.ts';
import type { MathematicsNode } from '../expression/tree.ts';

/** A stretch of plain text, or the mathematics that stood between two backticks. */
export type TextRun =
	| { readonly kind: 'text'; readonly text: string }
	| { readonly kind: 'mathematics'; readonly mathematics: MathematicsNode };

/** Where and why a rich text cannot be read. */
export interface RichTextFacts {
	readonly text: string;
	/** Index into the whole rich text, 0-based, in UTF-16 units. */
	readonly position: number;
	readonly expected: string;
	readonly found: string;
}

/** Thrown for a backtick without its partner, or for bad mathematics between two; the latter is the cause. */
export class RichTextError extends Error {
	readonly code = 'rich-text';
	readonly position: number;
	readonly expected: string;
	readonly found: string;

	constructor(facts: RichTextFacts, cause?: ExpressionSyntaxError) {
		const shown = facts.text.length > 60 ? `${facts.text.slice(0, 60)}…` : facts.text;
		const message = `expected ${facts.expected}, found ${facts.found} at position ${facts.position} of "${shown}"`;
		super(message, cause && { cause });
		this.name = 'RichTextError';
		this.position = facts.position;
		this.expected = facts.expected;
		this.found = facts.found;
	}
}

/**
 * Splits a rich text into runs: plain text as it stands, mathematics between backticks parsed. Empty stretches of
 * text are left out; a text cannot hold a backtick of its own.
 * @throws {RichTextError} at the first backtick without a partner or the first place of bad mathematics.
 */
export function parseRichText(text: string): readonly TextRun[] {
	const runs: TextRun[] = [];
	let from = 0;
	while (from < text.length) {
		const opening = text.indexOf('`', from);
		const end = opening < 0 ? text.length : opening;
		if (end > from) runs.push({ kind: 'text', text: text.slice(from, end) });
		if (opening < 0) break;
		const closing = text.indexOf('`', opening + 1);
		if (closing < 0) {
			const expected = 'a second backtick after the mathematics';
			throw new RichTextError({ text, position: opening, expected, found: 'none' });
		}
		runs.push({ kind: 'mathematics', mathematics: parseInside(text, opening + 1, closing) });
		from = closing + 1;
	}
	return runs;
}

/** The rich text as one plain line of text, mathematics printed with U+2212, × and ÷. */
export function printRichText(text: string, style: WritingStyle = 'textbook'): string {
	return joinRuns(text, (mathematics) => printMathematics(mathematics, style));
}

/** The rich text as it is read aloud, mathematics in words. */
export function speakRichText(text: string): string {
	return joinRuns(text, speakMathematics);
}

function joinRuns(text: string, write: (mathematics: MathematicsNode) => string): string {
	return parseRichText(text)
		.map((run) => (run.kind === 'text' ? run.text : write(run.mathematics)))
		.join('');
}

function parseInside(text: string, from: number, to: number): MathematicsNode {
	try {
		return parseMathematics(text.slice(from, to));
	} catch (error) {
		if (!(error instanceof ExpressionSyntaxError)) throw error;
		const { expected, found } = error;
		throw new RichTextError({ text, position: from + error.position, expected, found }, error);
	}
}
