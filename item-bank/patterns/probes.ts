import type { Operator } from '../expression/tree.ts';
import { getPattern } from './index.ts';
import type { PatternId } from './pattern.ts';
import type { TwoNumbers } from './subject.ts';
import { workRight, workTwoNumbers } from './work.ts';

/** A pattern, or working without any. */
export type Rule = PatternId | 'right';

/** Items that tell patterns apart when students make no other slips; they do, so repeat what matters. */
export interface ProbeSet {
	readonly items: readonly TwoNumbers[];
	/** Rules that give the same answer to every item; a pattern that applies to none of them stands with "right". */
	readonly together: readonly (readonly Rule[])[];
	/** Whether a full search showed that no fewer items of the pool separate as much. */
	readonly isSmallest: boolean;
}

/** Largest size of a number in a probe. */
const LARGEST_OPERAND = 12;
/** Branches looked at before the search gives up proving and keeps the best set it has. */
const MOST_BRANCHES = 20_000;

/**
 * The smallest set of at most `most` two-number items that separates the patterns from each other and from the right
 * rule, as far as any item can; where a pattern does not apply its answer is the right one. The pool: + − × ÷ of integers
 * from −12 to 12 without 0, quotients exact. Among equals the items with plainer numbers win, so the result is always
 * the same. When no such set is found, `together` says what the best set found leaves unseparated.
 * @throws {UnknownPatternError} for an id that is none.
 */
export function findProbes(ids: readonly PatternId[], most: number): ProbeSet {
	const rules: readonly Rule[] = ['right', ...new Set(ids)];
	const candidates = listCandidates(rules);
	const target = candidates.reduce((all, { separated }) => all | separated, 0n);
	const quick = chooseGreedily(candidates, target, most);
	const { chosen, isComplete } = chooseFewest(candidates, target, most, quick);
	return {
		items: chosen.map(({ item }) => item),
		together: listTogether(
			rules,
			chosen.map(({ item }) => item),
		),
		isSmallest: isComplete && isCovered(chosen, target),
	};
}

/** Groups of two or more rules that answer all items alike. */
export function listTogether(rules: readonly Rule[], items: readonly TwoNumbers[]): readonly (readonly Rule[])[] {
	const groups = new Map<string, Rule[]>();
	for (const rule of rules) {
		const answers = items.map((item) => answerBy(rule, item)).join(' ');
		groups.set(answers, [...(groups.get(answers) ?? []), rule]);
	}
	return [...groups.values()].filter((group) => group.length > 1);
}

/** Every item of the pool with one operator, plainer numbers first. */
export function listPool(operator: Operator): readonly TwoNumbers[] {
	const numbers = Array.from({ length: 2 * LARGEST_OPERAND + 1 }, (_, index) => index - LARGEST_OPERAND).filter(
		Boolean,
	);
	return numbers
		.flatMap((left) => numbers.map((right): TwoNumbers => ({ operator, left, right })))
		.filter((item) => workRight(item) !== undefined)
		.sort((a, b) => rate(a) - rate(b));
}

interface Candidate {
	readonly item: TwoNumbers;
	/** One bit for each pair of rules the item separates. */
	readonly separated: bigint;
}

/** Equal sizes and sizes up to 2 make patterns agree by chance, so they come last; small numbers come first. */
function rate({ left, right }: TwoNumbers): number {
	const [larger, smaller] = [Math.max(Math.abs(left), Math.abs(right)), Math.min(Math.abs(left), Math.abs(right))];
	return (smaller <= 2 ? 100 : 0) + (larger === smaller ? 50 : 0) + larger + smaller;
}

function answerBy(rule: Rule, item: TwoNumbers): number | undefined {
	const right = workRight(item);
	return rule === 'right' ? right : (workTwoNumbers(getPattern(rule).slips, item) ?? right);
}

/** Items that separate something, none of which separates only what another does as well. */
function listCandidates(rules: readonly Rule[]): readonly Candidate[] {
	const operators: readonly Operator[] = ['add', 'subtract', 'multiply', 'divide'];
	const seen = new Map<bigint, Candidate>();
	for (const item of operators.flatMap(listPool)) {
		const answers = rules.map((rule) => answerBy(rule, item));
		const separated = markPairs(answers);
		if (separated !== 0n && !seen.has(separated)) seen.set(separated, { item, separated });
	}
	const all = [...seen.values()];
	const isWorse = (a: bigint, b: bigint): boolean => a !== b && (a & ~b) === 0n;
	return all.filter(({ separated }) => !all.some((other) => isWorse(separated, other.separated)));
}

function markPairs(answers: readonly (number | undefined)[]): bigint {
	let pairs = 0n;
	for (const [index, answer] of answers.entries()) {
		for (const earlier of answers.slice(0, index)) pairs = (pairs << 1n) | (earlier === answer ? 0n : 1n);
	}
	return pairs;
}

function chooseGreedily(candidates: readonly Candidate[], target: bigint, most: number): readonly Candidate[] {
	const chosen: Candidate[] = [];
	for (let left = target; left !== 0n && chosen.length < most; ) {
		const gains = candidates.map(({ separated }) => countBits(separated & left));
		const best = candidates[gains.indexOf(Math.max(...gains))];
		if (best === undefined) break;
		chosen.push(best);
		left &= ~best.separated;
	}
	return chosen;
}

/** Tries ever more items, branching on the pair that fewest items separate; `quick` is the answer when that takes too long. */
function chooseFewest(
	candidates: readonly Candidate[],
	target: bigint,
	most: number,
	quick: readonly Candidate[],
): { readonly chosen: readonly Candidate[]; readonly isComplete: boolean } {
	let branches = 0;
	const cover = (left: bigint, count: number): readonly Candidate[] | undefined => {
		if (left === 0n) return [];
		if (count === 0) return undefined;
		for (const candidate of fewestFor(candidates, left)) {
			branches += 1;
			if (branches > MOST_BRANCHES) return undefined;
			const rest = cover(left & ~candidate.separated, count - 1);
			if (rest !== undefined) return [candidate, ...rest];
		}
		return undefined;
	};
	const longest = isCovered(quick, target) ? quick.length - 1 : most;
	for (let count = 0; count <= longest; count += 1) {
		const chosen = cover(target, count);
		if (chosen !== undefined) return { chosen, isComplete: true };
		if (branches > MOST_BRANCHES) return { chosen: quick, isComplete: false };
	}
	return { chosen: quick, isComplete: true };
}

/** The items that separate the pair with fewest items, those that separate most first. */
function fewestFor(candidates: readonly Candidate[], left: bigint): readonly Candidate[] {
	let fewest: readonly Candidate[] | undefined;
	for (let pair = 1n; pair <= left; pair <<= 1n) {
		if ((left & pair) === 0n) continue;
		const able = candidates.filter(({ separated }) => (separated & pair) !== 0n);
		if (fewest === undefined || able.length < fewest.length) fewest = able;
		if (fewest.length <= 1) break;
	}
	const gain = ({ separated }: Candidate): number => countBits(separated & left);
	return [...(fewest ?? [])].sort((a, b) => gain(b) - gain(a));
}

function isCovered(chosen: readonly Candidate[], target: bigint): boolean {
	return (target & ~chosen.reduce((all, { separated }) => all | separated, 0n)) === 0n;
}

function countBits(bits: bigint): number {
	let count = 0;
	for (let left = bits; left !== 0n; left &= left - 1n) count += 1;
	return count;
}
