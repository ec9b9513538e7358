import { findFramework, standardsBelow } from '../standards/code.ts';
import type { Blueprint, Range } from '../types.ts';
import type { ItemTraits } from './item-traits.ts';

/** One thing a blueprint asks of every form: a sum over its items that has to lie in a range. All worths are integers. */
export interface Requirement {
	/** JSON pointer into the blueprint, and the name of the requirement. */
	readonly path: string;
	/** What is counted, as in "items on 6.3(D) with counters". */
	readonly words: string;
	/** What the sum of worths is called. */
	readonly unit: 'items' | 'points' | 'words' | 'mean';
	readonly min?: number;
	readonly max?: number;
	/** What an item adds; `section` is where it stands, 0-based. */
	readonly worth: (item: ItemTraits, section: number) => number;
}

type Test = (item: ItemTraits) => boolean;

/** Every range a blueprint sets, in document order. Unknown codes match nothing. */
export function requirementsOf(blueprint: Blueprint): readonly Requirement[] {
	const all: Test = () => true;
	return [
		...ranges('/items', 'items on the form', 'items', blueprint.items, all),
		...ranges('/points', 'points on the form', 'points', blueprint.points, all),
		...blueprint.cells.flatMap((cell, index) => {
			const isUnder = underStandard(blueprint, cell.standard === undefined ? undefined : [cell.standard]);
			const test: Test = (item) => isUnder(item) && (cell.model === undefined || item.model === cell.model);
			return share(`/cells/${index}`, cellWords(cell.standard, cell.model), cell, test);
		}),
		...(blueprint.dok ?? []).flatMap((entry, index) =>
			share(`/dok/${index}`, `at DOK ${entry.dok}`, entry, ({ dok }) => dok === entry.dok),
		),
		...(blueprint.kinds ?? []).flatMap((entry, index) =>
			share(`/kinds/${index}`, `of kind ${entry.kind}`, entry, ({ kind }) => kind === entry.kind),
		),
		...(blueprint.pointValues ?? []).flatMap((entry, index) =>
			share(
				`/pointValues/${index}`,
				`worth ${count(entry.points, 'point')}`,
				entry,
				({ points }) => points === entry.points,
				['items'],
			),
		),
		...(blueprint.roles ?? []).flatMap((entry, index) =>
			share(`/roles/${index}`, `with the context role ${entry.role}`, entry, ({ role }) => role === entry.role),
		),
		...(blueprint.shapes ?? []).flatMap((entry, index) =>
			share(`/shapes/${index}`, `of shape ${entry.shape}`, entry, ({ shape }) => shape === entry.shape),
		),
		...sum('/readingLoad/words', 'words to read', 'words', blueprint.readingLoad?.words, ({ reading }) => reading),
		...difficultyRequirements(blueprint),
		...blueprint.sections.map(
			(section, index): Requirement => ({
				path: `/sections/${index}/items`,
				words: `items in section "${section.title}"`,
				unit: 'items',
				...section.items,
				worth: (_item, at) => (at === index ? 1 : 0),
			}),
		),
	];
}

/** Says for each section of a blueprint whether an item may stand in it. */
export function sectionTests(blueprint: Blueprint): readonly Test[] {
	return blueprint.sections.map(({ standards, models, kinds, shapes }) => {
		const isUnder = underStandard(blueprint, standards);
		return (item) =>
			isUnder(item) &&
			(models === undefined || models.includes(item.model)) &&
			(kinds === undefined || kinds.includes(item.kind)) &&
			(shapes === undefined || shapes.includes(item.shape));
	});
}

/** Whether an item's lead standard is one of the codes or below one; without codes any item fits. */
export function underStandard(
	blueprint: Pick<Blueprint, 'framework' | 'edition'>,
	codes: readonly string[] | undefined,
): Test {
	if (codes === undefined) return () => true;
	const framework = findFramework(blueprint.framework, blueprint.edition);
	const below = new Set(
		codes.flatMap((code) => (framework ? standardsBelow(framework, code).map((one) => one.code) : [])),
	);
	return ({ standard }) => standard !== undefined && below.has(standard);
}

/** The cell in words: "on 6.3(D) with counters". */
export function cellWords(standard: string | undefined, model: string | undefined): string {
	const on = standard === undefined ? 'on any standard' : `on ${standard}`;
	return model === undefined ? on : `${on} with ${model}`;
}

/** A range in words: "5", "at least 3", "3 to 5". */
export function rangeWords({ min, max }: Range): string {
	if (max === 0) return 'no';
	if (min === undefined) return `at most ${max}`;
	if (max === undefined) return `at least ${min}`;
	return min === max ? String(min) : `${min} to ${max}`;
}

/** A requirement as a sentence part: "needs 3 to 5 items on 6.3(D) with counters". */
export function requirementWords(requirement: Requirement): string {
	if (requirement.unit === 'mean') return requirement.words;
	const last = requirement.max ?? requirement.min;
	const words = last === 1 ? requirement.words.replace(/^(item|point|word)s\b/, '$1') : requirement.words;
	return `needs ${rangeWords(requirement)} ${words}`;
}

/** A number with its noun: "1 point", "2 points". */
export function count(value: number, noun: string): string {
	return `${value} ${noun}${value === 1 ? '' : 's'}`;
}

function share(
	path: string,
	words: string,
	entry: { readonly items?: Range; readonly points?: number | Range },
	test: Test,
	units: readonly ('items' | 'points')[] = ['items', 'points'],
): readonly Requirement[] {
	return units.flatMap((unit) => {
		const range = entry[unit];
		const isRange = typeof range === 'object';
		return isRange ? ranges(`${path}/${unit}`, `${unit} ${words}`, unit, range, test) : [];
	});
}

function ranges(
	path: string,
	words: string,
	unit: 'items' | 'points',
	range: Range | undefined,
	test: Test,
): readonly Requirement[] {
	return sum(path, words, unit, range, (item) => (test(item) ? (unit === 'items' ? 1 : item.points) : 0));
}

function sum(
	path: string,
	words: string,
	unit: Requirement['unit'],
	range: Range | undefined,
	worth: (item: ItemTraits) => number,
): readonly Requirement[] {
	return range === undefined ? [] : [{ path, words, unit, ...range, worth }];
}

/** The mean of the estimates in its band, as two sums of tenths that do not depend on how many items there are. */
function difficultyRequirements({ difficulty }: Blueprint): readonly Requirement[] {
	if (!difficulty) return [];
	const target = Math.round(difficulty.target * 10);
	const band = Math.round(difficulty.band * 10);
	const words = `needs a mean estimated difficulty of ${difficulty.target}, give or take ${difficulty.band}`;
	const common = { words, unit: 'mean' as const };
	return [
		{ ...common, path: '/difficulty', min: 0, worth: (item) => Math.round(10 * item.difficulty) - (target - band) },
		{ ...common, path: '/difficulty', max: 0, worth: (item) => Math.round(10 * item.difficulty) - (target + band) },
	];
}
