import { checkItem } from '../checks/check-item.ts';
import { invariant } from '../invariant.ts';
import type { Problem } from '../problem.ts';
import { createRandom } from '../random/random.ts';
import type { Item } from '../types.ts';
import type { Family } from './family.ts';
import { families, findFamily } from './index.ts';
import { checkValues, fillParameters, type Parameters } from './parameters.ts';

/** What is asked of a family. */
export interface ItemOrder {
	readonly family: string;
	readonly count: number;
	readonly seed: string | number;
	readonly parameters?: Parameters;
	/** Code of a standard that every item must carry. */
	readonly standard?: string;
}

/** Items that were made, and why there are fewer than asked for. */
export interface ItemBatch {
	readonly items: readonly Item[];
	readonly problems: readonly Problem[];
}

/** Draws for one item before its seed is given up. */
const mostAttempts = 40;
/** Seeds in a row that bring nothing new before a family is taken to have no more. */
const mostIdle = 400;
/** Seeds tried before parameters are taken to leave no item. */
const mostProbes = 24;

/** What keeps a family from making items of these parameters, found within a second; none when items exist. */
export function checkParameters(family: Family, parameters: Parameters): readonly Problem[] {
	const problems = checkValues(family.parameters, parameters);
	if (problems.length > 0) return problems;
	const obstacle =
		family.findObstacle(fillParameters(family.parameters, parameters)) ?? findDraftObstacle(family, parameters);
	if (obstacle === undefined) return [];
	const message = `expected parameters that leave items of "${family.id}", but nothing is left by: ${obstacle}`;
	return [{ code: 'family-parameters-impossible', path: '', message }];
}

/**
 * The item of a seed: the same forever for the same family version, seed and parameters. Undefined when the seed makes
 * none, which other seeds may. The parameters must have passed {@link checkParameters}. The last number in a seed is the
 * item's turn, so that seeds in a row put the key at one place after the other.
 */
export function makeItem(family: Family, seed: string, parameters: Parameters = {}): Item | undefined {
	const filled = fillParameters(family.parameters, parameters);
	const random = createRandom(`${family.id} ${family.version} ${seed}`);
	const turn = Number(/\d{1,9}$/.exec(seed)?.[0] ?? 0);
	const lot = random.nextInteger(0, 0xffff);
	for (let attempt = 0; attempt < mostAttempts; attempt += 1) {
		const draft = family.make({ random, turn, lot, attempt }, filled);
		if (draft === undefined) continue;
		const [problem] = checkItem(draft);
		invariant(!problem, `family ${family.id} made an unsound item of seed "${seed}": ${problem?.message}`);
		return { ...draft, origin: { family: family.id, version: family.version, seed, parameters: filled } };
	}
	return undefined;
}

/** Distinct items of a family; problems say what is wrong with the order, or why there are fewer. */
export function makeItems({ family: id, count, seed, parameters = {}, standard }: ItemOrder): ItemBatch {
	const family = findFamily(id);
	if (!family) {
		const known = families.map((one) => one.id).join(', ');
		const message = `expected a family among ${known}, found "${id}"`;
		return { items: [], problems: [{ code: 'family-unknown', path: '/family', message }] };
	}
	const problems = [...checkParameters(family, parameters).map(underParameters), ...checkStandard(family, standard)];
	if (problems.length > 0) return { items: [], problems };
	const made = new Map<string, Item>();
	for (let turn = 1, idle = 0; made.size < count && idle < mostIdle; turn += 1) {
		const item = makeItem(family, `${seed}/${turn}`, parameters);
		const face = item && carries(item, standard) ? faceOf(item) : undefined;
		if (item === undefined || face === undefined || made.has(face)) idle += 1;
		else {
			made.set(face, item);
			idle = 0;
		}
	}
	const items = [...made.values()];
	if (items.length === count) return { items, problems: [] };
	const message = `expected ${count} distinct items of "${id}", found no more than ${items.length}`;
	return { items, problems: [{ code: 'family-items-short', path: '/count', message }] };
}

/** Numbers exist, but a few dozen seeds make no item of them: patterns lead to too few wrong answers. */
function findDraftObstacle(family: Family, parameters: Parameters): string | undefined {
	for (let seed = 1; seed <= mostProbes; seed += 1) if (makeItem(family, `probe/${seed}`, parameters)) return undefined;
	return 'error patterns lead to enough wrong answers to choose from';
}

/**
 * What makes two items one: the stem where it tells all that is asked, else also what there is to choose from. Items that
 * differ in their wrong answers, or in how the answer is given, ask the same.
 */
export function faceOf(item: Item): string {
	if (item.kind === 'gridded' || item.kind === 'point') return JSON.stringify(item.stem);
	if (item.kind === 'choice' && item.rule.kind !== 'true-statement' && item.rule.kind !== 'stated') {
		return JSON.stringify(item.stem);
	}
	const { name, origin, ...asked } = item;
	return JSON.stringify(asked);
}

function carries({ alignments }: Item, standard: string | undefined): boolean {
	return standard === undefined || alignments.some(({ code }) => code === standard);
}

function checkStandard(family: Family, standard: string | undefined): readonly Problem[] {
	const codes = family.standards.map(({ code }) => code);
	if (standard === undefined || codes.includes(standard)) return [];
	const message = `expected a standard of "${family.id}" among ${codes.join(', ')}, found "${standard}"`;
	return [{ code: 'family-standard-missing', path: '/standard', message }];
}

function underParameters(problem: Problem): Problem {
	return { ...problem, path: `/parameters${problem.path}` };
}
