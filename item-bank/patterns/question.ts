import type { Item } from '../types.ts';
import { findValue, subjectsOf } from './item-subjects.ts';
import { isSameAnswer } from './pattern.ts';
import type { Slips } from './slips.ts';
import { type Answer, findRightAnswer, type Subject } from './subject.ts';
import { answerUnder } from './work.ts';

/** What patterns are held against: one right answer, and everything a student may be working on to find it. */
export interface Question {
	readonly subjects: readonly Subject[];
	/** Undefined where the answer is neither a number nor an order, as in an item about true statements. */
	readonly right: Answer | undefined;
	/** Whether the answer is marked on a signed answer grid. */
	readonly isGridded: boolean;
}

/** A subject or an item as a question. */
export function questionOf(asked: Subject | Item): Question {
	if (!('stem' in asked)) {
		return { subjects: [asked], right: findRightAnswer(asked), isGridded: asked.kind === 'grid-entry' };
	}
	return { subjects: subjectsOf(asked), right: findValue(asked), isGridded: asked.kind === 'gridded' };
}

/**
 * The distinct wrong answers that slips lead to, in the order of the subjects; none where they do not apply.
 * @param rights the right answer to each subject, where the caller has them already.
 */
export function answersUnder(
	slips: Slips,
	{ subjects, right, isGridded }: Question,
	rights: readonly (Answer | undefined)[] = subjects.map(findRightAnswer),
): readonly Answer[] {
	const answers: Answer[] = [];
	for (let index = 0; index < subjects.length; index += 1) {
		const subject = subjects[index];
		if (subject === undefined) continue;
		const wrong = answerUnder(slips, subject);
		const rightHere = rights[index];
		if (wrong === undefined || rightHere === undefined || isSameAnswer(wrong, rightHere)) continue;
		const marked = isGridded && typeof wrong === 'number' ? (slips.gridEntry?.(wrong) ?? wrong) : wrong;
		const isKnown = answers.some((answer) => isSameAnswer(answer, marked));
		if (!isKnown && (right === undefined || !isSameAnswer(marked, right))) answers.push(marked);
	}
	return answers;
}
