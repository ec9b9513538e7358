import { listNodes } from '../expression/count.ts';
import { getPattern } from '../patterns/index.ts';
import type { ErrorPattern, PatternId } from '../patterns/pattern.ts';
import type { Subject } from '../patterns/subject.ts';
import { groupWrongAnswers } from '../patterns/wrong-answers.ts';

/** A wrong number that patterns lead to, and how much it is worth as a distractor. */
export interface Candidate {
	readonly value: number;
	readonly patterns: readonly PatternId[];
	/** The shares of its patterns added up. */
	readonly weight: number;
}

/** How often a pattern is met, as a share: ones that a study describes count most, slips in counting ticks least. */
export function weigh({ id, evidence }: ErrorPattern, subjects: readonly Subject[]): number {
	const isTickSlip = id === 'start-tick-counted' || id === 'zero-skipped';
	if (isTickSlip && subjects.every(({ kind }) => kind !== 'walk')) return 1;
	return evidence === 'study' ? 4 : 3;
}

/**
 * The wrong numbers that patterns lead to and that are of a size somebody could believe: at most twice the size of the
 * key or of all numbers together, whichever is larger. In increasing order; a grid entry is no matter for options.
 */
export function listCandidates(subjects: readonly Subject[], key: number): readonly Candidate[] {
	const asked = subjects.filter(({ kind }) => kind !== 'grid-entry');
	const largest = 2 * Math.max(Math.abs(key), ...asked.map(sizeOf));
	return groupWrongAnswers({ subjects: asked, right: key, isGridded: false }).flatMap(({ answer, patterns }) => {
		if (typeof answer !== 'number' || Math.abs(answer) > largest) return [];
		let weight = 0;
		for (const id of patterns) weight += weigh(getPattern(id), asked);
		return [{ value: answer, patterns, weight }];
	});
}

/** The sizes of all numbers of a subject together. */
function sizeOf(subject: Subject): number {
	switch (subject.kind) {
		case 'two-numbers':
			return Math.abs(subject.left) + Math.abs(subject.right);
		case 'expression':
			return sum(listNodes(subject.expression).map((node) => (node.kind === 'number' ? node.value : 0)));
		case 'ordering':
			return sum(subject.numbers);
		case 'distance':
			return Math.abs(subject.from) + Math.abs(subject.to);
		case 'counter-set':
			return subject.plus + subject.minus;
		case 'walk':
			return Math.abs(subject.start) + sum(subject.moves);
		case 'absolute-value':
		case 'opposite-number':
			return Math.abs(subject.of);
		case 'grid-entry':
			return Math.abs(subject.value);
		default:
			return subject satisfies never;
	}
}

function sum(numbers: readonly number[]): number {
	let total = 0;
	for (const number of numbers) total += Math.abs(number);
	return total;
}
