import type { Subject } from '../patterns/subject.ts';
import { type Candidate, listCandidates } from './candidates.ts';
import {
	type DistractorChoice,
	type DistractorOrder,
	describeChoice,
	dropLoneKeys,
	pickSet,
} from './choose-distractors.ts';
import { listOptionSets, type OptionSet } from './option-sets.ts';

/** An item of a form whose options are numbers. */
export interface NumberQuestion {
	readonly subjects: readonly Subject[];
	readonly key: number;
	readonly order: Omit<DistractorOrder, 'wanted'>;
}

/** Share of an item's best score below which a set is not taken for the sake of the key's place. */
const goodEnough = 0.25;

/**
 * Chooses distractors for all items of a form so that the key stands at each place about equally often: as evenly as is
 * possible by choosing which patterns supply options, since numbers stay in increasing order (item-writing guidelines 20
 * and 21 of Haladyna, Downing and Rodriguez 2002). No item takes a set worth less than a quarter of its best one, or one with a
 * lone sign that its best one does not have.
 */
export function balanceKeyPositions(questions: readonly NumberQuestion[]): readonly DistractorChoice[] {
	const planned = questions.map(planQuestion);
	const places = planned.map(({ byPosition }) => bestPosition(byPosition));
	for (let path = findPath(planned, places); path !== undefined; path = findPath(planned, places)) {
		for (const { item, to } of path) places[item] = to;
	}
	return planned.map(({ byPosition, candidates }, index) => {
		const { key, order } = questions[index] as NumberQuestion;
		return describeChoice(byPosition.get(places[index] ?? 0), key, order.count, candidates);
	});
}

/** The places that the key of an item can have within these limits, in increasing order. */
export function listKeyPositions(question: NumberQuestion): readonly number[] {
	return [...planQuestion(question).byPosition.keys()].sort((a, b) => a - b);
}

interface Plan {
	readonly candidates: readonly Candidate[];
	/** The set to take for each place that the key can have. */
	readonly byPosition: ReadonlyMap<number, OptionSet>;
}

interface Move {
	readonly item: number;
	readonly to: number;
}

function planQuestion({ subjects, key, order }: NumberQuestion): Plan {
	const candidates = listCandidates(subjects, key);
	const sets = dropLoneKeys(listOptionSets(candidates, key, order.count));
	const best = pickSet(sets, undefined);
	const byPosition = new Map<number, OptionSet>();
	for (const position of new Set(sets.map(({ keyPosition }) => keyPosition))) {
		const there = sets.filter((set) => set.keyPosition === position && isGoodEnough(set, best));
		const set = pickSet(there, order.seed);
		if (set !== undefined) byPosition.set(position, set);
	}
	return { candidates, byPosition };
}

function isGoodEnough(set: OptionSet, best: OptionSet | undefined): boolean {
	return best === undefined || (set.score >= best.score * goodEnough && (best.isLone || !set.isLone));
}

function bestPosition(byPosition: Plan['byPosition']): number {
	const [best] = [...byPosition].sort(([, a], [, b]) => b.score - a.score);
	return best?.[0] ?? 0;
}

/**
 * Moves, each freeing the place that the one before needs, that take a key from a fuller place to one emptier by two or
 * more; undefined when none are left, and then the places are as even as they can be.
 */
function findPath(plans: readonly Plan[], places: readonly number[]): readonly Move[] | undefined {
	const positions = [...new Set(plans.flatMap(({ byPosition }) => [...byPosition.keys()]))].sort((a, b) => a - b);
	const count = (position: number): number => places.filter((place) => place === position).length;
	for (const from of positions.toSorted((a, b) => count(b) - count(a))) {
		const reached = new Map<number, readonly Move[]>([[from, []]]);
		for (const [at, moves] of reached) {
			if (count(at) <= count(from) - 2) return moves;
			for (const to of positions) {
				if (reached.has(to)) continue;
				const item = cheapestMove(plans, places, at, to);
				if (item !== undefined) reached.set(to, [...moves, { item, to }]);
			}
		}
	}
	return undefined;
}

/** The item at a place that loses least by going to another; undefined when none can. */
function cheapestMove(plans: readonly Plan[], places: readonly number[], at: number, to: number): number | undefined {
	let cheapest: { readonly item: number; readonly loss: number } | undefined;
	for (const [item, { byPosition }] of plans.entries()) {
		const [here, there] = [byPosition.get(at), byPosition.get(to)];
		if (places[item] !== at || here === undefined || there === undefined) continue;
		const loss = 1 - there.score / here.score;
		if (cheapest === undefined || loss < cheapest.loss) cheapest = { item, loss };
	}
	return cheapest?.item;
}
