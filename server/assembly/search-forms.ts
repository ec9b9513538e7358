import { createRandom, type Random } from '../../item-bank/random/random.ts';
import type { BuildProof } from '../../item-bank/types.ts';
import { type Arrangement, arrangeItems } from './arrange-items.ts';
import type { BuildLimits, BuildProgress } from './build-request.ts';
import { classesOf, type ItemClass } from './classes.ts';
import { type ProgramPlan, writeFormProgram } from './form-program.ts';
import { type ImprovedForms, improveForms } from './improve-forms.ts';
import type { Instance } from './instance.ts';
import { pickItems } from './pick-items.ts';
import { countsOf, solverSeed, startFrom } from './program-counts.ts';
import type { Solution, Solver } from './solver.ts';

/** What a search needs besides the instance. */
export interface SearchTools {
	readonly solver: Solver;
	readonly limits: BuildLimits;
	readonly seed: string | number;
	readonly report: (progress: BuildProgress) => void;
}

/** Forms with a proof, a proof that there are none and whether sharing rules take part in it, or neither. */
export type SearchResult =
	| { readonly kind: 'found'; readonly arrangement: Arrangement; readonly proof: BuildProof }
	| { readonly kind: 'none'; readonly isFine: boolean; readonly nodes: number }
	| { readonly kind: 'undecided'; readonly nodes: number };

/** A search under way: the best forms so far, and what is known of the best possible. */
interface Search {
	readonly instance: Instance;
	readonly tools: SearchTools;
	readonly random: Random;
	best: (ImprovedForms & { readonly method: BuildProof['method'] }) | undefined;
	bound: number;
	nodes: number;
}

/** Up to so many fine classes, programs keep sharing rules themselves from the start. */
const smallBank = 400;

/** Exchanges tried to improve each solution. */
const improvingSteps = 60_000;

/** Choices among equally even forms tried for the order rules to come out. */
const orderings = 12;

/**
 * Searches forms in steps from quick to exact.
 * 1. All forms take the same number from each class of like items: the unknowns of one form, and no unevenness.
 * 2. Each form chooses freely and every measure has to come out the same: bands of 0 instead of a minimum.
 * 3. Any forms that keep the ranges, improved item by item.
 * 4. The integer program of the least unevenness, for a bound and perhaps better forms.
 * In a small bank sharing rules are rows of every program from step 2 on. In a large one programs of coarse classes leave them
 * out: what those prove to be impossible is, and their bounds hold; fine classes come last, where they are needed.
 */
export function searchForms(instance: Instance, tools: SearchTools): SearchResult {
	const random = createRandom(`${tools.seed} choice`);
	const search: Search = { instance, tools, random, best: undefined, bound: 0, nodes: 0 };
	const coarse = planOf(instance, classesOf(instance, false), false);
	const fine = instance.rules.length === 0 ? coarse : planOf(instance, classesOf(instance, true), true);
	const isSmall = fine.classes.length <= smallBank;
	if (isAlikePossible(instance)) attempt(search, { ...coarse, forms: 1, copies: instance.count }, 'like-for-like');
	const status = climb(search, isSmall ? fine : coarse, coarse);
	if (status === 'infeasible') {
		// Where ranges alone conflict, that is the plainer reason.
		const isFine =
			isSmall && fine !== coarse && attempt(search, { ...coarse, goal: 'any' }, 'classes') !== 'infeasible';
		return { kind: 'none', isFine, nodes: search.nodes };
	}
	const isRuleBound = !isKept(search) || status === 'optimal';
	if (!isSmall && isRuleBound && climb(search, fine, fine) === 'infeasible') {
		return { kind: 'none', isFine: true, nodes: search.nodes };
	}
	return finish(search);
}

/** Steps 2 to 4 at one grain, ending early when the best forms are proved to be. Says what became of the last program. */
function climb(search: Search, plan: ProgramPlan, coarse: ProgramPlan): Solution['status'] {
	const { instance } = search;
	const method = plan.keepsRules ? 'items' : 'classes';
	if (isSettled(search)) return 'optimal';
	if (instance.count > 1 || instance.like !== undefined) {
		for (const one of plan === coarse ? [plan] : [coarse, plan]) {
			const even = search.bound === 0 ? attempt(search, { ...one, goal: 'even' }, method) : undefined;
			if (even === 'infeasible') search.bound = 1;
			if (isSettled(search)) return 'optimal';
		}
		if (!isKept(search) && attempt(search, { ...plan, goal: 'any' }, method) === 'infeasible') return 'infeasible';
		if (isSettled(search)) return 'optimal';
	}
	return attempt(search, plan, method);
}

function planOf(instance: Instance, classes: readonly ItemClass[], keepsRules: boolean): ProgramPlan {
	return { instance, classes, forms: instance.count, copies: 1, keepsRules, goal: 'balanced' };
}

/** Whether all forms could be copies of one plan: nothing is wanted on one of them only, and no given form differs. */
function isAlikePossible(instance: Instance): boolean {
	return instance.count > 1 && instance.wanted.length === 0 && instance.like === undefined;
}

function isKept({ best }: Search): boolean {
	return best !== undefined && best.excess === 0;
}

function isSettled({ best, bound }: Search): boolean {
	return best !== undefined && best.excess === 0 && best.unevenness <= bound;
}

/** Solves a program, turns a solution into items, improves them, and keeps them if they are better than the best so far. */
function attempt(search: Search, plan: ProgramPlan, method: BuildProof['method']): Solution['status'] {
	const { best, instance, random, tools } = search;
	const written = writeFormProgram(plan);
	const isBalanced = plan.goal === 'balanced' && plan.copies === 1;
	const nodesBefore = search.nodes;
	const solution = tools.solver.solve(written.program, {
		limits: tools.limits,
		seed: solverSeed(tools.seed),
		isFirstEnough: plan.goal !== 'balanced',
		...(best && isBalanced ? { start: startFrom(written, plan, best.picked) } : {}),
		onNews: ({ nodes }) => tell(search, 'searching', nodesBefore + nodes),
	});
	search.nodes += solution.nodes;
	if (!('values' in solution)) return solution.status;
	if (isBalanced) search.bound = Math.max(search.bound, solution.bound);
	tell(search, 'choosing', search.nodes);
	const { picked } = pickItems(instance, plan.classes, countsOf(written, solution.values, plan), random);
	const improved = improveForms(instance, picked, random, { steps: improvingSteps, least: 0, goal: search.bound });
	const isLess =
		!best ||
		improved.excess < best.excess ||
		(improved.excess === best.excess && improved.unevenness < best.unevenness);
	if (isLess) search.best = { ...improved, method };
	return solution.status;
}

function tell(search: Search, phase: BuildProgress['phase'], nodes: number): void {
	const { best, bound, tools } = search;
	tools.report({ phase, nodes, bound, ...(best && isKept(search) ? { best: best.unevenness } : {}) });
}

/** Puts the best forms in order; where an order rule is not kept, other items that are as good may do better. */
function finish(search: Search): SearchResult {
	const { best, bound, instance, nodes, random } = search;
	if (!best || best.excess > 0) return { kind: 'undecided', nodes };
	const { method, unevenness } = best;
	tell(search, 'choosing', nodes);
	// Among forms as even, those with keys spread over the options; then, while an order rule is not kept, others again.
	const polished = improveForms(instance, best.picked, random, {
		steps: improvingSteps / 4,
		least: improvingSteps / 4,
		goal: unevenness,
	});
	const chosen = polished.excess > 0 || polished.unevenness > unevenness ? best : polished;
	let arrangement = arrangeItems(instance, chosen.picked, random);
	for (let round = 1; round < orderings && arrangement.breaches > 0; round += 1) {
		const options = { steps: improvingSteps / 6, least: 300 * round, goal: unevenness, isOtherWanted: true };
		const other = improveForms(instance, chosen.picked, random, options);
		if (other.excess > 0 || other.unevenness > unevenness) continue;
		const next = arrangeItems(instance, other.picked, random);
		if (next.breaches < arrangement.breaches) arrangement = next;
	}
	const status = unevenness <= bound ? 'optimal' : 'feasible';
	return {
		kind: 'found',
		arrangement,
		proof: { status, unevenness, bound: Math.min(bound, unevenness), nodes, method },
	};
}
