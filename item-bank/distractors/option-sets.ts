import type { Candidate } from './candidates.ts';

/** A set of distractors as it would stand around the key. */
export interface OptionSet {
	/** In increasing order, the key left out. */
	readonly distractors: readonly Candidate[];
	/** Place of the key among all options in increasing order, 0 is first. */
	readonly keyPosition: number;
	/** Whether the key is the only negative or the only positive option, which gives it away. */
	readonly isKeyLone: boolean;
	/** Whether some option is the only negative or the only positive one, which is a clue. */
	readonly isLone: boolean;
	/** How much common patterns are told apart; a lone sign halves it. */
	readonly score: number;
}

/** Weight of working right, beside the weights of patterns. */
const weightOfRight = 8;
/** More candidates than this are cut to the heaviest, which keeps the number of sets in the thousands. */
const mostCandidates = 14;

/**
 * All sets of as many distractors as asked for, or of all there are. The score of a set is the sum, over all pairs of
 * options, of the product of their weights: the share of pairs of students, each following a rule, that the item separates.
 */
export function listOptionSets(candidates: readonly Candidate[], key: number, count: number): readonly OptionSet[] {
	const heaviest =
		candidates.length <= mostCandidates
			? candidates
			: [...candidates].sort((a, b) => b.weight - a.weight).slice(0, mostCandidates);
	const ordered = [...heaviest].sort((a, b) => a.value - b.value);
	const sets: OptionSet[] = [];
	const chosen: Candidate[] = [];
	const wanted = Math.min(count, ordered.length);
	const extend = (from: number): void => {
		if (chosen.length === wanted) {
			sets.push(judge([...chosen], key));
			return;
		}
		for (let index = from; index <= ordered.length - (wanted - chosen.length); index += 1) {
			const next = ordered[index];
			if (next === undefined) return;
			chosen.push(next);
			extend(index + 1);
			chosen.pop();
		}
	};
	extend(0);
	return sets;
}

function judge(distractors: readonly Candidate[], key: number): OptionSet {
	let [keyPosition, negatives, positives] = [0, key < 0 ? 1 : 0, key > 0 ? 1 : 0];
	let [together, separated] = [weightOfRight, 0];
	for (const { value, weight } of distractors) {
		if (value < key) keyPosition += 1;
		if (value < 0) negatives += 1;
		if (value > 0) positives += 1;
		separated += together * weight;
		together += weight;
	}
	const isLone = negatives === 1 || positives === 1;
	const isKeyLone = (key < 0 && negatives === 1) || (key > 0 && positives === 1);
	return { distractors, keyPosition, isKeyLone, isLone, score: isLone ? separated / 2 : separated };
}
