import type { Item } from '../types.ts';
import { patterns } from './index.ts';
import { isSameAnswer, type PatternId, subjectKindsOf } from './pattern.ts';
import { answersUnder, type Question, questionOf } from './question.ts';
import { type Answer, findRightAnswer, type Subject } from './subject.ts';

/** A wrong answer with all patterns that lead to it: one group, as the answer does not tell them apart. */
export interface WrongAnswer {
	readonly answer: Answer;
	/** In the order of the registry. */
	readonly patterns: readonly PatternId[];
}

/** Patterns with the subjects they can apply to: most questions need half of them. */
const reaching = patterns.map((pattern) => ({ ...pattern, reach: subjectKindsOf(pattern) }));

/**
 * Every wrong answer that a pattern leads to, from what an item asks or from a subject: numbers in increasing order, or
 * orders as the patterns come. A pattern stands at several answers where it can be followed in several ways.
 */
export function listWrongAnswers(asked: Subject | Item): readonly WrongAnswer[] {
	return groupWrongAnswers(questionOf(asked));
}

/** {@link listWrongAnswers} for a question made otherwise. */
export function groupWrongAnswers(question: Question): readonly WrongAnswer[] {
	const groups: { readonly answer: Answer; readonly patterns: PatternId[] }[] = [];
	const rights = question.subjects.map(findRightAnswer);
	const kinds = question.subjects.map(({ kind }) => kind);
	for (const { id, slips, reach } of reaching) {
		if (!kinds.some((kind) => reach.includes(kind))) continue;
		for (const answer of answersUnder(slips, question, rights)) {
			const known = groups.find((group) => isSameAnswer(group.answer, answer));
			if (known) known.patterns.push(id);
			else groups.push({ answer, patterns: [id] });
		}
	}
	const rank = (answer: Answer): number => (typeof answer === 'number' ? answer : 0);
	return groups.sort((a, b) => rank(a.answer) - rank(b.answer));
}
