import { groupRules } from '../../item-bank/forms/item-groups.ts';
import { count, type Requirement, requirementsOf, requirementWords } from '../../item-bank/forms/requirements.ts';
import { createRandom } from '../../item-bank/random/random.ts';
import type { Blueprint, ConflictEntry } from '../../item-bank/types.ts';
import type { BuildRequest } from './build-request.ts';
import { classesOf, rulesSeen } from './classes.ts';
import { writeFormProgram } from './form-program.ts';
import { makeInstance } from './instance.ts';
import type { PoolItem } from './pool.ts';
import type { Program } from './program.ts';
import { solverSeed } from './program-counts.ts';
import type { SearchTools } from './search-forms.ts';

/** Requirements that cannot hold together. */
export interface Conflict {
	/** Paths in document order. */
	readonly paths: readonly string[];
	/** Whether without any one of them the others can hold; false where limits left that open. */
	readonly isIrreducible: boolean;
}

/**
 * Finds an irreducible set of conflicting requirements. The relaxation names rows that conflict even in fractions; from
 * those, or from all where only whole items conflict, requirements are left out one at a time for as long as the rest still
 * conflicts. `isFine` says that sharing rules take part.
 */
export function findConflict(
	request: BuildRequest,
	pool: readonly PoolItem[],
	isFine: boolean,
	tools: SearchTools,
): Conflict {
	const all = requirementPaths(request, pool, isFine);
	const programWithout = (dropped: ReadonlySet<string>): Program => {
		const instance = makeInstance(request, pool, createRandom(tools.seed), dropped);
		const classes = classesOf(instance, isFine ? 'fine' : 'coarse');
		return writeFormProgram({
			instance,
			classes,
			forms: instance.count,
			copies: 1,
			grain: isFine ? 'fine' : 'coarse',
			goal: 'any',
		}).program;
	};
	const conflicts = (paths: readonly string[]): boolean | undefined => {
		const dropped = new Set(all.filter((path) => !paths.includes(path)));
		const { status } = tools.solver.solve(programWithout(dropped), {
			limits: tools.limits,
			seed: solverSeed(tools.seed),
			isFirstEnough: true,
		});
		return status === 'infeasible' ? true : status === 'limit' ? undefined : false;
	};
	const narrowed = narrowByRelaxation(programWithout(new Set()), all, tools);
	let remaining = narrowed !== undefined && conflicts(narrowed) === true ? narrowed : all;
	let isIrreducible = true;
	for (const path of dropOrder(remaining)) {
		const without = remaining.filter((other) => other !== path);
		const still = conflicts(without);
		if (still === true) remaining = without;
		if (still === undefined) isIrreducible = false;
	}
	return { paths: all.filter((path) => remaining.includes(path)), isIrreducible };
}

/** Each conflicting requirement in the blueprint's words, with what the bank has for it and what is excluded and why. */
export function describeConflict(
	conflict: Conflict,
	request: BuildRequest,
	pool: readonly PoolItem[],
): readonly ConflictEntry[] {
	const requirements = requirementsOf(request.blueprint);
	return conflict.paths.map((path) => {
		const mine = requirements.filter((requirement) => requirement.path === path);
		const [requirement] = mine;
		const matching =
			requirement && countsItems(requirement)
				? pool.filter(({ traits, sections }) => isCounted(requirement, traits, sections))
				: pool;
		const excluded = matching.filter(({ exclusions }) => exclusions.length > 0);
		return {
			path,
			requirement: requirement ? formsWords(requirement, request.count) : pathWords(path, request.blueprint),
			inBank: matching.length,
			usable: matching.length - excluded.length,
			excluded: excluded.slice(0, 20).map(({ traits, exclusions }) => ({
				item: traits.id,
				reason: exclusions.map(({ reason }) => reason).join('; '),
			})),
		};
	});
}

function countsItems({ unit }: Requirement): boolean {
	return unit === 'items' || unit === 'points';
}

function isCounted(requirement: Requirement, traits: PoolItem['traits'], sections: readonly number[]): boolean {
	return requirement.path.startsWith('/sections')
		? sections.some((section) => requirement.worth(traits, section) > 0)
		: requirement.worth(traits, -1) > 0;
}

function formsWords(requirement: Requirement, forms: number): string {
	const words = requirementWords(requirement);
	return forms > 1 && countsItems(requirement) && requirement.min !== undefined
		? `${words} on each of ${forms} forms, ${requirement.min * forms} in all`
		: words;
}

/** Everything that could be left out, in document order. Anchors and exclusions count as requirements where they bite. */
function requirementPaths(request: BuildRequest, pool: readonly PoolItem[], isFine: boolean): readonly string[] {
	const { blueprint } = request;
	const exclusionPaths = new Set(pool.flatMap(({ exclusions }) => exclusions.map(({ path }) => path)));
	return [
		...new Set(requirementsOf(blueprint).map(({ path }) => path)),
		...rulesSeen(groupRules(blueprint), isFine ? 'fine' : 'coarse').map(({ path }) => path),
		...(request.count > 1 || request.like
			? Object.keys(blueprint.parallel ?? {}).map((group) => `/parallel/${group}`)
			: []),
		...exclusionPaths,
		...((blueprint.anchors ?? []).length > 0 ? ['/anchors'] : []),
		...(blueprint.forced ?? []).map((_, index) => `/forced/${index}`),
	];
}

/** What to leave out first: finer wishes before cells, so that what remains is what a department can act on. */
function dropOrder(paths: readonly string[]): readonly string[] {
	const order = [
		'/parallel',
		'/readingLoad',
		'/difficulty',
		'/exclusions',
		'/points',
		'/roles',
		'/shapes',
		'/pointValues',
		'/sections',
		'/items',
		'/kinds',
		'/dok',
		'/cells',
	];
	const rank = (path: string): number => {
		const place = order.findIndex((start) => path.startsWith(start));
		return place < 0 ? order.length : place;
	};
	return [...paths].sort((a, b) => rank(a) - rank(b));
}

function narrowByRelaxation(
	program: Program,
	all: readonly string[],
	tools: SearchTools,
): readonly string[] | undefined {
	const rows = tools.solver.findConflict(program);
	if (rows === undefined) return undefined;
	const names = new Set(rows.map((row) => program.rows[row]?.name));
	const facts = all.filter(
		(path) =>
			path === '/anchors' ||
			path === '/forbidden' ||
			path === '/like' ||
			path === '/gridProfile' ||
			path.startsWith('/exclusions') ||
			path === '/readingLoad/mostPerItem',
	);
	const named = all.filter((path) => names.has(path));
	return named.length === 0 ? undefined : all.filter((path) => named.includes(path) || facts.includes(path));
}

function pathWords(path: string, blueprint: Blueprint): string {
	const rule = groupRules(blueprint).find((candidate) => candidate.path === path);
	if (rule) return rule.words;
	const [, list = '', key = ''] = path.split('/');
	switch (list) {
		case 'parallel': {
			const bands: Readonly<Record<string, number | undefined>> = { ...blueprint.parallel };
			return `forms may differ by at most ${bands[key]} in ${measureWords(key)}`;
		}
		case 'forced': {
			const entry = blueprint.forced?.[Number(key)];
			return `"${entry?.item}" has to be on ${entry?.form === undefined ? 'one of the forms' : `form ${entry.form}`}`;
		}
		case 'anchors':
			return `the anchors ${(blueprint.anchors ?? []).map(({ item }) => item).join(', ')} stand on every form`;
		case 'forbidden':
			return `${count(blueprint.forbidden?.length ?? 0, 'item')} forbidden`;
		case 'like':
			return 'no item of the form this one is to be like';
		case 'gridProfile':
			return `keys have to fit the grid ${blueprint.gridProfile}`;
		case 'readingLoad':
			return `at most ${blueprint.readingLoad?.mostPerItem} words to read in one item`;
		case 'exclusions':
			return key === 'usedWithinDays'
				? `no item given in the last ${blueprint.exclusions?.usedWithinDays} days`
				: `no item of the forms ${(blueprint.exclusions?.notOnForms ?? []).join(', ')}`;
		default:
			return path;
	}
}

function measureWords(group: string): string {
	switch (group) {
		case 'readingLoad':
			return 'words to read';
		case 'difficulty':
			return 'summed estimated difficulty';
		case 'levels':
			return 'items of a difficulty level';
		case 'points':
			return 'points';
		default:
			return `items per ${group === 'dok' ? 'DOK' : group.replace(/s$/, '')}`;
	}
}
