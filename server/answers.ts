import { readEntry } from '../item-bank/responses/entry.ts';
import { getGridProfile } from '../item-bank/responses/grid-profiles.ts';

/** Thrown where an answer is neither a number nor a letter. */
export class AnswerUnreadableError extends Error {
	readonly code = 'answer-unreadable';
	readonly answer: string;

	constructor(answer: string) {
		super(`expected a whole number such as -5, or the letter of an option, found "${answer}"`);
		this.answer = answer;
	}
}

/** An answer as typed: the letter of an option, or a number with any sign people type. Throws {@link AnswerUnreadableError}. */
export function readAnswer(typed: string): string | number {
	if (/^[a-h]$/i.test(typed.trim())) return typed.trim().toLowerCase();
	const reading = readEntry(typed, getGridProfile('plain-sign-first'));
	if (reading.kind !== 'valid') throw new AnswerUnreadableError(typed);
	return reading.value;
}
