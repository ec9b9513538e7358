import type { Slips } from './slips.ts';
import { type Answer, findRightAnswer, type Subject } from './subject.ts';
import { answerUnder } from './work.ts';

/** Ids of the error patterns; options of items carry them. */
export type PatternId =
	| 'signs-dropped'
	| 'second-minus-lost'
	| 'leading-minus-parked'
	| 'two-minuses-make-plus'
	| 'sizes-added-minus-put'
	| 'sizes-subtracted-first-sign-kept'
	| 'larger-minus-smaller'
	| 'subtraction-reversed'
	| 'wall-at-zero'
	| 'operation-changed-sign-kept'
	| 'both-numbers-flipped'
	| 'product-rule-in-sum'
	| 'direction-by-operation'
	| 'sum-rule-in-product'
	| 'any-negative-makes-negative'
	| 'product-read-as-difference'
	| 'start-tick-counted'
	| 'zero-skipped'
	| 'sign-left-off'
	| 'detached-minus'
	| 'right-to-left'
	| 'order-by-size'
	| 'distance-adds-sizes'
	| 'all-counters-counted'
	| 'majority-colour-only'
	| 'absolute-value-as-opposite';

/** One wrong idea as a rule that leads to a specific wrong answer. An answer is consistent with a pattern; nobody "has" one. */
export interface ErrorPattern {
	readonly id: PatternId;
	/** Plain language, such as "the second of two minuses is lost". */
	readonly name: string;
	/** One sentence for a teacher that begins "Consistent with". */
	readonly sentence: string;
	/** Author and year, or that it is common practice. */
	readonly source: string;
	/** study: a publication describes it; practice: known from practice only. */
	readonly evidence: 'study' | 'practice';
	readonly slips: Slips;
}

/** What subjects a pattern can apply to, by kind; whether it does depends on the numbers. */
export function subjectKindsOf({ slips }: ErrorPattern): readonly Subject['kind'][] {
	const kinds: Readonly<Record<keyof Slips, readonly Subject['kind'][]>> = {
		twoNumbers: ['two-numbers', 'expression'],
		oppositeNumber: ['opposite-number', 'expression'],
		absoluteValue: ['absolute-value', 'expression'],
		regrouping: ['expression'],
		ordering: ['ordering'],
		distance: ['distance'],
		counterSet: ['counter-set'],
		walk: ['walk'],
		gridEntry: ['grid-entry'],
	};
	return [...new Set((Object.keys(slips) as readonly (keyof Slips)[]).flatMap((slip) => kinds[slip]))];
}

/**
 * The wrong answer a pattern leads to; undefined where it does not apply: it does not touch the subject, comes to the
 * right answer all the same, or the subject has no right answer. Never throws.
 */
export function findWrongAnswer({ slips }: Pick<ErrorPattern, 'slips'>, subject: Subject): Answer | undefined {
	const answer = answerUnder(slips, subject);
	if (answer === undefined) return undefined;
	const right = findRightAnswer(subject);
	return right === undefined || isSameAnswer(answer, right) ? undefined : answer;
}

/** Whether two answers say the same. */
export function isSameAnswer(a: Answer, b: Answer): boolean {
	if (typeof a === 'number' || typeof b === 'number') return a === b;
	return a.length === b.length && a.every((value, index) => value === b[index]);
}
