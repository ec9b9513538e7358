import type { ItemTraits } from '../../item-bank/forms/item-traits.ts';
import { sectionTests } from '../../item-bank/forms/requirements.ts';
import { findFramework, standardsBelow } from '../../item-bank/standards/code.ts';
import type { Blueprint, ItemShape, KindName, MissingItems, ModelType, RoleName } from '../../item-bank/types.ts';
import { classesOf, type ItemClass } from './classes.ts';
import { writeFormProgram } from './form-program.ts';
import type { Instance } from './instance.ts';
import { solverSeed } from './program-counts.ts';
import type { SearchTools } from './search-forms.ts';

/**
 * The fewest new items, by standard, model type, kind and the rest, with which the forms can be built; empty when no such
 * items help or the limits end the search. New items are taken to share nothing with others, and to have the estimated
 * difficulty and reading load that the plan likes best.
 */
export function findMissing(instance: Instance, isFine: boolean, tools: SearchTools): readonly MissingItems[] {
	const own = classesOf(instance, isFine ? 'fine' : 'coarse');
	const classes = [...own, ...newClasses(instance)];
	const plan = {
		instance,
		classes,
		forms: instance.count,
		copies: 1,
		grain: isFine ? 'fine' : 'coarse',
		goal: 'fewest-new',
	} as const;
	const { program, picks } = writeFormProgram(plan);
	const solution = tools.solver.solve(program, { limits: tools.limits, seed: solverSeed(tools.seed) });
	if (!('values' in solution)) return [];
	const counts = new Map<ItemClass, number>();
	for (const { column, class: index } of picks) {
		const one = classes[index];
		const value = solution.values[column] ?? 0;
		if (one && one.members.length === 0 && value > 0) counts.set(one, (counts.get(one) ?? 0) + value);
	}
	return [...counts].map(([{ traits }, value]) => ({
		count: value,
		standard: traits.standard ?? '',
		model: traits.model,
		kind: traits.kind,
		dok: traits.dok,
		points: traits.points,
		...(traits.role === undefined ? {} : { role: traits.role }),
		...(traits.shape === 'other' ? {} : { shape: traits.shape }),
	}));
}

const models: readonly ModelType[] = ['symbols', 'counters', 'number-line', 'story', 'table'];

/** What a new item costs; ten items of the strangest sort cost less than one item more. */
const newItemPrice = 1000;

/** A class without members for every sort of item the blueprint can ask for; sorts the bank has examples of are cheaper. */
function newClasses({ blueprint, items }: Instance): readonly ItemClass[] {
	const admits = sectionTests(blueprint);
	const inBank = new Set(items.map(({ traits }) => `${traits.standard} ${traits.model} ${traits.kind} ${traits.dok}`));
	const kinds = unique<KindName>([
		'choice',
		'gridded',
		...(blueprint.kinds ?? []).map(({ kind }) => kind),
		...blueprint.sections.flatMap((one) => one.kinds ?? []),
	]);
	const doks = unique([1, 2, ...(blueprint.dok ?? []).map(({ dok }) => dok)]);
	const worths = unique([1, ...(blueprint.pointValues ?? []).map(({ points }) => points)]);
	const roles = unique<RoleName | undefined>(['change', ...(blueprint.roles ?? []).map(({ role }) => role)]);
	const shapes = unique<ItemShape>([
		'other',
		...(blueprint.shapes ?? []).map(({ shape }) => shape),
		...blueprint.sections.flatMap((one) => one.shapes ?? []),
	]);
	const difficulty = Math.round(blueprint.difficulty?.target ?? 4);
	const made: ItemTraits[] = [];
	for (const standard of wantedStandards(
		blueprint,
		items.map(({ traits }) => traits.standard),
	)) {
		for (const model of models) {
			for (const kind of kinds) {
				for (const dok of doks) {
					for (const points of worths) {
						for (const role of model === 'story' || model === 'table' ? roles : [undefined]) {
							for (const shape of shapes)
								made.push(newTraits({ standard, model, kind, dok, points, role, shape, difficulty }));
						}
					}
				}
			}
		}
	}
	const strangeness = ({ standard, model, kind, dok }: ItemTraits): number =>
		(inBank.has(`${standard} ${model} ${kind} ${dok}`) ? 0 : 2) +
		(model === 'symbols' ? 0 : 1) +
		(kind === 'multiple-choice' ? 1 : 0) +
		dok -
		1;
	return made
		.map((traits) => ({
			traits,
			members: [],
			price: newItemPrice + strangeness(traits),
			sections: admits.flatMap((test, index) => (test(traits) ? [index] : [])),
		}))
		.filter(({ sections }) => sections.length > 0);
}

function newTraits(
	wanted: Pick<ItemTraits, 'standard' | 'model' | 'kind' | 'dok' | 'points' | 'role' | 'shape' | 'difficulty'>,
): ItemTraits {
	const isWordy = wanted.model === 'story' || wanted.model === 'table';
	return {
		...wanted,
		id: '',
		version: 1,
		setting: undefined,
		crossesZero: false,
		reading: isWordy ? 30 : 15,
		answer: undefined,
		numbers: undefined,
		keyPlace: undefined,
		facts: [],
	};
}

/** The codes that cells and sections name, and those below them that the bank has items on; without any, all of the bank's. */
function wantedStandards(blueprint: Blueprint, inBank: readonly (string | undefined)[]): readonly string[] {
	const framework = findFramework(blueprint.framework, blueprint.edition);
	const named = [
		...blueprint.cells.flatMap(({ standard }) => standard ?? []),
		...blueprint.sections.flatMap(({ standards }) => standards ?? []),
	];
	const known = unique(inBank.flatMap((code) => code ?? []));
	if (named.length === 0) return known.slice(0, 40);
	const below = new Set(
		named.flatMap((code) => (framework ? standardsBelow(framework, code).map((one) => one.code) : [])),
	);
	const withItems = known.filter((code) => below.has(code));
	const empty = named.filter(
		(code) =>
			!withItems.some((known) => framework && standardsBelow(framework, code).some((one) => one.code === known)),
	);
	return unique([...withItems, ...empty]).slice(0, 40);
}

function unique<T>(values: readonly T[]): readonly T[] {
	return [...new Set(values)];
}
