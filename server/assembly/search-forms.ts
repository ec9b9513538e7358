import { createRandom, type Random } from '../../item-bank/random/random.ts';
import type { BuildProof } from '../../item-bank/types.ts';
import { type Arrangement, arrangeItems } from './arrange-items.ts';
import type { BuildLimits, BuildProgress } from './build-request.ts';
import { classesOf, type Grain } from './classes.ts';
import { type FormProgram, type ProgramPlan, writeFormProgram } from './form-program.ts';
import { chooseInTurn } from './forms-in-turn.ts';
import { compareImproved, type ImprovedForms, improveForms } from './improve-forms.ts';
import type { Instance } from './instance.ts';
import { type PickedItem, pickItems } from './pick-items.ts';
import { countsOf, solverSeed, startFrom } from './program-counts.ts';
import type { Solution, Solver } from './solver.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

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
	readonly workshop: Workshop;
	best: (ImprovedForms & { readonly method: BuildProof['method'] }) | undefined;
	bound: number;
	nodes: number;
}

/** Up to so many fine classes, programs keep sharing rules themselves from the start. */
const smallBank = 400;

/** Most exchanges tried to improve each solution; where there are few items and places, fewer say as much. */
const mostSteps = 60_000;

/** Times the first forms are improved again before a program is tried. */
const extraRounds = 6;

/** Choices among equally even forms tried for the order rules to come out. */
const orderings = 12;

/**
 * Searches forms in steps from quick to exact.
 * 1. All forms take the same number from each class of like items: the unknowns of one form, and no unevenness. Where classes
 *    are too small for that, the same with classes of nearly like items, improved item by item.
 * 2. Each form chooses freely and every measure has to come out the same: bands of 0 instead of a minimum.
 * 3. Any forms that keep the ranges, improved item by item.
 * 4. The integer program of the least unevenness, for a bound and perhaps better forms.
 * A large bank ends with step 1 once that has given forms; where that step finds none, forms are first chosen in turn.
 * In a small bank sharing rules are rows of every program from step 2 on. In a large one programs of coarse classes leave them
 * out: what those prove to be impossible is, and their bounds hold; fine classes come last, where they are needed.
 */
export function searchForms(instance: Instance, tools: SearchTools): SearchResult {
	const random = createRandom(`${tools.seed} choice`);
	const search: Search = {
		instance,
		tools,
		random,
		workshop: openWorkshop(instance),
		best: undefined,
		bound: 0,
		nodes: 0,
	};
	const coarse = planOf(instance, 'coarse');
	const fine = instance.rules.length === 0 ? coarse : planOf(instance, 'fine');
	const isSmall = fine.classes.length <= smallBank;
	startSearch(search, coarse);
	if (isKept(search) && isLarge(coarse)) return finish(search);
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

/** Step 1, exactly and then nearly. What these programs cannot do may still be possible. */
function startSearch(search: Search, coarse: ProgramPlan): void {
	const { instance } = search;
	const isAlike = instance.count > 1 && instance.wanted.length === 0 && instance.like === undefined;
	if (isAlike) attempt(search, { ...coarse, forms: 1, copies: instance.count }, 'like-for-like');
	if (isSettled(search)) return;
	const near = planOf(instance, 'near');
	const plan: ProgramPlan = isAlike ? { ...near, forms: 1, copies: instance.count } : near;
	attempt(search, { ...plan, goal: 'any' }, 'near-alike');
	if (!search.best && instance.count > 1 && isLarge(coarse)) {
		const picked = chooseInTurn(search.workshop, (one) => solvePlan(search, writeFormProgram(one), one), search.random);
		if (picked) improve(search, picked, 'in-turn');
	}
	improveMore(search);
}

function improveMore(search: Search): void {
	for (let round = 0; round < extraRounds && search.best && !isSettled(search); round += 1) {
		improve(search, search.best.picked, search.best.method);
	}
}

/** Whether programs of all forms at once take too long to be a way to first forms. */
function isLarge({ classes, forms }: ProgramPlan): boolean {
	return classes.length * forms > 1500;
}

/** Whether the program of the least unevenness is small enough to tell more than improving item by item does. */
function isWorthProving({ classes, forms }: ProgramPlan): boolean {
	return classes.length * forms <= 600;
}

/** Steps 2 to 4 at one grain, ending early when the best forms are proved to be. Says what became of the last program. */
function climb(search: Search, plan: ProgramPlan, coarse: ProgramPlan): Solution['status'] {
	const { instance } = search;
	const method = plan.grain === 'fine' ? 'items' : 'classes';
	if (isSettled(search)) return 'optimal';
	if (instance.count > 1 || instance.like !== undefined) {
		for (const one of plan === coarse ? [plan] : [coarse, plan]) {
			const even = search.bound === 0 ? attempt(search, { ...one, goal: 'even' }, method) : undefined;
			if (even === 'infeasible') search.bound = 1;
			if (isSettled(search)) return 'optimal';
		}
		if (isKept(search) && !isWorthProving(plan)) {
			improveMore(search);
			return 'feasible';
		}
		if (!isKept(search) && attempt(search, { ...plan, goal: 'any' }, method) === 'infeasible') return 'infeasible';
		if (isSettled(search)) return 'optimal';
		improveMore(search);
		if (isKept(search) && !isWorthProving(plan)) return 'feasible';
	}
	return attempt(search, plan, method);
}

function planOf(instance: Instance, grain: Grain): ProgramPlan {
	const classes = classesOf(instance, grain);
	return { instance, classes, forms: instance.count, copies: 1, grain, goal: 'balanced' };
}

function isKept({ best }: Search): boolean {
	return best !== undefined && best.missed === 0 && best.excess === 0;
}

function isSettled(search: Search): boolean {
	return isKept(search) && (search.best?.unevenness ?? 0) <= search.bound;
}

function solvePlan(search: Search, written: FormProgram, plan: ProgramPlan): Solution {
	const { best, tools } = search;
	const isBalanced = plan.goal === 'balanced' && plan.copies === 1 && plan.forms === search.instance.count;
	const nodesBefore = search.nodes;
	const solution = tools.solver.solve(written.program, {
		limits: tools.limits,
		seed: solverSeed(tools.seed),
		isFirstEnough: plan.goal !== 'balanced',
		...(best && isBalanced ? { start: startFrom(written, plan, best.picked) } : {}),
		onNews: ({ nodes }) => tell(search, 'searching', nodesBefore + nodes),
	});
	search.nodes += solution.nodes;
	return solution;
}

/** Solves a program, turns a solution into items, improves them, and keeps them if they are better than the best so far. */
function attempt(search: Search, plan: ProgramPlan, method: BuildProof['method']): Solution['status'] {
	const { random, workshop } = search;
	const written = writeFormProgram(plan);
	const solution = solvePlan(search, written, plan);
	if (!('values' in solution)) return solution.status;
	if (plan.goal === 'balanced' && plan.copies === 1) search.bound = Math.max(search.bound, solution.bound);
	tell(search, 'choosing', search.nodes);
	const { picked } = pickItems(workshop.ledger, plan.classes, countsOf(written, solution.values, plan), random);
	improve(search, picked, method);
	return solution.status;
}

function stepsFor({ instance }: Search, places: number): number {
	return Math.min(mostSteps, 40 * places * instance.items.length);
}

function improve(search: Search, start: readonly PickedItem[], method: BuildProof['method']): void {
	const { best, bound, random, workshop } = search;
	const improved = improveForms(workshop, start, random, {
		steps: stepsFor(search, start.length),
		least: 0,
		goal: bound,
	});
	if (!best || compareImproved(improved, best) < 0) search.best = { ...improved, method };
}

function tell(search: Search, phase: BuildProgress['phase'], nodes: number): void {
	const { best, bound, tools } = search;
	tools.report({ phase, nodes, bound, ...(best && isKept(search) ? { best: best.unevenness } : {}) });
}

/** Puts the best forms in order; where an order rule is not kept, other items that are as good may do better. */
function finish(search: Search): SearchResult {
	const { best, bound, instance, nodes, random, workshop } = search;
	if (!best || !isKept(search)) return { kind: 'undecided', nodes };
	const { method, unevenness } = best;
	tell(search, 'choosing', nodes);
	const steps = stepsFor(search, best.picked.length);
	// Among forms as even, those with keys spread over the options; then, while an order rule is not kept, others again.
	const polished = improveForms(workshop, best.picked, random, {
		steps: steps / 4,
		least: steps / 4,
		goal: unevenness,
	});
	const chosen = compareImproved(polished, best) < 0 ? polished : best;
	let arrangement = arrangeItems(instance, chosen.picked, random);
	for (let round = 1; round < orderings && arrangement.breaches > 0; round += 1) {
		const options = { steps: steps / 6, least: 300 * round, goal: unevenness, isOtherWanted: true };
		const other = improveForms(workshop, chosen.picked, random, options);
		if (other.missed > 0 || other.excess > 0 || other.unevenness > unevenness) continue;
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
