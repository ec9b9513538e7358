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

interface Group {
	readonly answer: Answer;
	readonly patterns: PatternId[];
}

/** Patterns that can apply, by the kinds of subjects of a question: there are only so many mixtures. */
const reachingOf = new Map<string, typeof reaching>();

function patternsReaching(subjects: readonly Subject[]): typeof reaching {
	let key = '';
	for (const { kind } of subjects) key += `${kind} `;
	const known = reachingOf.get(key);
	if (known) return known;
	const found = reaching.filter(({ reach }) => subjects.some(({ kind }) => reach.includes(kind)));
	reachingOf.set(key, found);
	return found;
}

/**
 * Every wrong answer that a pattern leads to, from what an item asks or from a subject: numbers in increasing order, or
 * orders as the patterns come. A pattern stands at several answers where it can be followed in several ways.
 */
export function listWrongAnswers(asked: Subject | Item): readonly WrongAnswer[] {
	return groupWrongAnswers(questionOf(asked));
}

/** {@link listWrongAnswers} for a question made otherwise. */
export function groupWrongAnswers(question: Question): readonly WrongAnswer[] {
	const groups: Group[] = [];
	// Most answers are numbers, and those are found at once.
	const byNumber = new Map<number, Group>();
	const rights = question.subjects.map(findRightAnswer);
	for (const { id, slips } of patternsReaching(question.subjects)) {
		for (const answer of answersUnder(slips, question, rights)) {
			const known =
				typeof answer === 'number' ? byNumber.get(answer) : groups.find((group) => isSameAnswer(group.answer, answer));
			if (known) {
				known.patterns.push(id);
				continue;
			}
			const group = { answer, patterns: [id] };
			groups.push(group);
			if (typeof answer === 'number') byNumber.set(answer, group);
		}
	}
	const rank = (answer: Answer): number => (typeof answer === 'number' ? answer : 0);
	return groups.sort((a, b) => rank(a.answer) - rank(b.answer));
}
