import { createRandom, type Random } from '../../item-bank/random/random.ts';
import type { BuildProof } from '../../item-bank/types.ts';
import { type Arrangement, arrangeItems } from './arrange-items.ts';
import type { BuildLimits, BuildProgress } from './build-request.ts';
import { classesOf, type ItemClass } from './classes.ts';
import { type FormProgram, type ProgramPlan, writeFormProgram } from './form-program.ts';
import type { Instance } from './instance.ts';
import { type ClassCount, pickItems } from './pick-items.ts';
import type { Solution, Solver } from './solver.ts';

/** What a search needs besides the instance. */
export interface SearchTools {
	readonly solver: Solver;
	readonly limits: BuildLimits;
	readonly seed: string | number;
	readonly report: (progress: BuildProgress) => void;
}

/** Forms with a proof, a proof that there are none and at which grain, or neither. */
export type SearchResult =
	| { readonly kind: 'found'; readonly arrangement: Arrangement; readonly proof: BuildProof }
	| { readonly kind: 'none'; readonly isFine: boolean; readonly nodes: number }
	| { readonly kind: 'undecided'; readonly nodes: number };

/** Numbers of items a class program has chosen from each class, and what it proves. */
interface Counted {
	readonly counts: readonly ClassCount[];
	readonly cost: number;
	readonly method: BuildProof['method'];
	readonly classes: readonly ItemClass[];
}

/** Choices of items tried for one set of counts, for sharing and order rules to come out. */
const choices = 24;

/**
 * Searches forms in steps from quick to exact. First all forms take the same number from each class of like items: one
 * form's unknowns, no unevenness. Then each form chooses by itself. Items are then chosen within the classes so that sharing
 * rules hold; where that fails, a program with fine classes keeps those rules itself. Coarse programs leave the sharing rules
 * out, so what they prove to be impossible is, and their bound holds.
 */
export function searchForms(instance: Instance, tools: SearchTools): SearchResult {
	const random = createRandom(`${tools.seed} choice`);
	const coarse = classesOf(instance, false);
	const alike = isAlikePossible(instance)
		? solveCounts({ ...basePlan(instance, coarse), forms: 1, copies: instance.count }, tools)
		: undefined;
	let nodes = alike?.solution.nodes ?? 0;
	const found: Counted[] = alike?.counted ? [{ ...alike.counted, method: 'like-for-like' }] : [];
	let bound = 0;
	if (alike?.counted?.cost !== 0) {
		const free = solveCounts({ ...basePlan(instance, coarse), start: undefined }, tools);
		nodes += free.solution.nodes;
		if (free.solution.status === 'infeasible') return { kind: 'none', isFine: false, nodes };
		if ('bound' in free.solution) bound = free.solution.bound;
		const isBetter = free.counted && (found[0] === undefined || free.counted.cost < found[0].cost);
		if (free.counted && isBetter) found.unshift({ ...free.counted, method: 'classes' });
	}
	for (const counted of found) {
		const arrangement = chooseItems(instance, counted, tools, random);
		if (arrangement) return { kind: 'found', arrangement, proof: proofOf(counted, bound, nodes) };
	}
	if (instance.rules.length === 0) return { kind: 'undecided', nodes };
	return searchFine(instance, found, bound, nodes, tools, random);
}

function searchFine(
	instance: Instance,
	found: readonly Counted[],
	coarseBound: number,
	before: number,
	tools: SearchTools,
	random: Random,
): SearchResult {
	let nodes = before;
	const fine = classesOf(instance, true);
	const narrowed = narrowClasses(fine, found, instance);
	for (const classes of narrowed.length < fine.length ? [narrowed, fine] : [fine]) {
		const { solution, counted } = solveCounts({ ...basePlan(instance, classes), keepsRules: true }, tools);
		nodes += solution.nodes;
		if (solution.status === 'infeasible' && classes === fine) return { kind: 'none', isFine: true, nodes };
		if (!counted) continue;
		const arrangement = chooseItems(instance, { ...counted, method: 'items' }, tools, random);
		const bound = classes === fine && 'bound' in solution ? Math.max(coarseBound, solution.bound) : coarseBound;
		if (arrangement)
			return { kind: 'found', arrangement, proof: proofOf({ ...counted, method: 'items' }, bound, nodes) };
	}
	return { kind: 'undecided', nodes };
}

/** The fine classes inside coarse classes that earlier counts used, at most a few hundred: enough to find forms quickly. */
function narrowClasses(
	fine: readonly ItemClass[],
	found: readonly Counted[],
	instance: Instance,
): readonly ItemClass[] {
	if (fine.length <= 400) return fine;
	const wanted = new Set<number>();
	for (const { counts, classes } of found) {
		for (const { class: index } of counts)
			for (const member of (classes[index]?.members ?? []).slice(0, 8 * instance.count)) wanted.add(member);
	}
	return fine.filter(
		({ members, wanted: forced }) => forced !== undefined || members.some((member) => wanted.has(member)),
	);
}

/** Whether all forms could be copies of one plan: nothing is wanted on one of them only, and no given form differs. */
function isAlikePossible(instance: Instance): boolean {
	return instance.count > 1 && instance.wanted.length === 0 && instance.like === undefined;
}

type CountPlan = ProgramPlan & { readonly start?: readonly number[] | undefined };

function basePlan(instance: Instance, classes: readonly ItemClass[]): ProgramPlan {
	return { instance, classes, forms: instance.count, copies: 1, keepsRules: false, goal: 'balanced' };
}

function solveCounts(
	plan: CountPlan,
	tools: SearchTools,
): { readonly solution: Solution; readonly counted: Omit<Counted, 'method'> | undefined } {
	const written = writeFormProgram(plan);
	const solution = tools.solver.solve(written.program, {
		limits: tools.limits,
		seed: solverSeed(tools.seed),
		onNews: ({ nodes, best, bound }) =>
			tools.report({ phase: 'searching', nodes, bound, ...(best === undefined ? {} : { best }) }),
	});
	if (!('values' in solution)) return { solution, counted: undefined };
	const counts = countsOf(written, solution.values, plan);
	return { solution, counted: { counts, cost: solution.cost, classes: plan.classes } };
}

/** The seed as the solver takes it: an integer from 0 to 2³¹ − 1. */
export function solverSeed(seed: string | number): number {
	return createRandom(`${seed} solver`).nextInteger(0, 2 ** 31 - 1);
}

/** Counts that a solution stands for; where one form was written for several, each of them has the counts. */
export function countsOf(
	{ picks }: FormProgram,
	values: readonly number[],
	{ copies }: Pick<ProgramPlan, 'copies'>,
): readonly ClassCount[] {
	return picks.flatMap(({ column, ...place }) => {
		const count = values[column] ?? 0;
		if (count === 0) return [];
		return Array.from({ length: copies }, (_, copy) => ({ ...place, form: place.form + copy, count }));
	});
}

function chooseItems(
	instance: Instance,
	counted: Counted,
	tools: SearchTools,
	random: Random,
): Arrangement | undefined {
	tools.report({ phase: 'choosing' });
	let best: Arrangement | undefined;
	let failures = 0;
	for (let choice = 0; choice < choices && failures < 4; choice += 1) {
		const { picked, excess } = pickItems(instance, counted.classes, counted.counts, random);
		if (excess > 0) {
			failures += 1;
			continue;
		}
		const arrangement = arrangeItems(instance, picked, random);
		if (!best || arrangement.breaches < best.breaches) best = arrangement;
		if (best.breaches === 0) return best;
	}
	return best;
}

function proofOf({ cost, method }: Counted, bound: number, nodes: number): BuildProof {
	return {
		status: cost <= bound ? 'optimal' : 'feasible',
		unevenness: cost,
		bound: Math.min(bound, cost),
		nodes,
		method,
	};
}
