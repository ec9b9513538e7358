import type { GroupRule } from '../../item-bank/forms/item-groups.ts';
import type { ItemTraits } from '../../item-bank/forms/item-traits.ts';
import type { Measure } from '../../item-bank/forms/measures.ts';
import type { Requirement } from '../../item-bank/forms/requirements.ts';
import { type Grain, type ItemClass, rulesSeen } from './classes.ts';
import { bandPath, type Instance, sumFixed } from './instance.ts';
import { draftProgram, type Program, type ProgramDraft } from './program.ts';

/** What kind of program to write. */
export interface ProgramPlan {
	readonly instance: Instance;
	readonly classes: readonly ItemClass[];
	/** Forms to write unknowns for: all, or 1 where every form takes the same classes. */
	readonly forms: number;
	/** Forms that share each class: the number of copies of the one form. */
	readonly copies: number;
	/** What the classes look at; sharing rules they can keep become rows. */
	readonly grain: Grain;
	/**
	 * balanced: as even as possible; even: every measure the same on all forms; any: whatever keeps the rows; nearest: rows may be broken at a price; fewest-new: as few
	 * as possible from the classes without members, which stand for items still to be written.
	 */
	readonly goal: 'balanced' | 'even' | 'any' | 'nearest' | 'fewest-new';
}

/** A program with the meaning of its unknowns. */
export interface FormProgram {
	readonly program: Program;
	/** Unknowns that count items: how many of a class stand in a section of a form. */
	readonly picks: readonly {
		readonly column: number;
		readonly form: number;
		readonly section: number;
		readonly class: number;
	}[];
}

/** Items a class of new items may give to each form; more than any form holds. */
const newItems = 200;

/** Writes the integer program of a plan. Rows are named by the blueprint's paths; what is no requirement has a name without "/". */
export function writeFormProgram(plan: ProgramPlan): FormProgram {
	const draft = draftProgram();
	const { instance, classes, forms } = plan;
	const picks: { column: number; form: number; section: number; class: number }[] = [];
	const byForm: (readonly Pick[])[] = [];
	for (let form = 0; form < forms; form += 1) {
		const mine: Pick[] = [];
		classes.forEach((one, index) => {
			const stock = one.members.length === 0 ? newItems : Math.floor(one.members.length / plan.copies);
			if (stock === 0) return;
			const cost = plan.goal === 'fewest-new' && one.members.length === 0 ? (one.price ?? 1) : 0;
			for (const section of one.sections) {
				const column = draft.addColumn(`form ${form + 1}, section ${section + 1}, class ${index + 1}`, 0, stock, cost);
				picks.push({ column, form, section, class: index });
				mine.push({ column, section, class: index, traits: one.traits });
			}
		});
		byForm.push(mine);
	}
	addStock(draft, plan, picks);
	addWanted(draft, plan, picks);
	byForm.forEach((mine, form) => {
		for (const requirement of instance.requirements) addRequirement(draft, plan, requirement, mine, form);
		for (const rule of rulesSeen(instance.rules, plan.grain)) addRule(draft, plan, rule, mine);
	});
	addEqualSections(draft, plan, byForm);
	addMeasures(draft, plan, byForm);
	if (plan.goal === 'balanced' || plan.goal === 'even') addTarget(draft, plan, byForm);
	return { program: draft.finish(), picks };
}

interface Pick {
	readonly column: number;
	readonly section: number;
	readonly class: number;
	readonly traits: ItemTraits;
}

/** No item on two forms or in two places. */
function addStock(draft: ProgramDraft, { classes, copies }: ProgramPlan, picks: FormProgram['picks']): void {
	const places = new Map<string, { readonly stock: number; readonly terms: [number, number][] }>();
	for (const { class: index, column, form } of picks) {
		const one = classes[index];
		const key = one?.isShared === true ? `${index} form ${form}` : `${index}`;
		const place = places.get(key) ?? { stock: Math.floor((one?.members.length ?? 0) / copies), terms: [] };
		place.terms.push([column, 1]);
		places.set(key, place);
	}
	for (const [key, { stock, terms }] of places) {
		if (stock > 0 && terms.length > 1) draft.addRow(`stock ${key}`, 0, stock, terms);
	}
}

function addWanted(draft: ProgramDraft, plan: ProgramPlan, picks: FormProgram['picks']): void {
	const { instance, classes } = plan;
	instance.wanted.forEach(({ path, form }, index) => {
		const mine = picks.filter(
			(pick) => classes[pick.class]?.wanted === index && (form === undefined || pick.form === form),
		);
		addElastic(
			draft,
			plan,
			path,
			form ?? 0,
			1,
			1,
			mine.map(({ column }) => [column, 1] as const),
			30,
		);
	});
}

function addRequirement(
	draft: ProgramDraft,
	plan: ProgramPlan,
	requirement: Requirement,
	mine: readonly Pick[],
	form: number,
): void {
	const fixed = sumFixed(plan.instance.anchors, (traits, section) => requirement.worth(traits, section));
	const terms = mine.map(({ column, traits, section }) => [column, requirement.worth(traits, section)] as const);
	addElastic(
		draft,
		plan,
		requirement.path,
		form,
		(requirement.min ?? -Infinity) - fixed,
		(requirement.max ?? Infinity) - fixed,
		terms,
		priceOf(requirement),
	);
}

function addRule(draft: ProgramDraft, plan: ProgramPlan, rule: GroupRule, mine: readonly Pick[]): void {
	const columns = new Map<string, number[]>();
	for (const { column, traits } of mine) {
		for (const group of rule.groupsOf(traits)) columns.set(group, [...(columns.get(group) ?? []), column]);
	}
	const fixed = new Map<string, number>();
	for (const { traits } of plan.instance.anchors) {
		for (const group of rule.groupsOf(traits)) fixed.set(group, (fixed.get(group) ?? 0) + 1);
	}
	for (const group of new Set([...columns.keys(), ...fixed.keys()])) {
		const list = columns.get(group) ?? [];
		const most = rule.most - (fixed.get(group) ?? 0);
		addElastic(
			draft,
			plan,
			rule.path,
			0,
			-Infinity,
			most,
			list.map((column) => [column, 1] as const),
			3,
		);
	}
}

/** Parallel forms have the same number of items in each section, so that places can be compared. */
function addEqualSections(draft: ProgramDraft, { instance }: ProgramPlan, byForm: readonly (readonly Pick[])[]): void {
	const [first, ...others] = byForm;
	if (!first) return;
	instance.blueprint.sections.forEach((_, section) => {
		const inSection = (picks: readonly Pick[], sign: number) =>
			picks.filter((pick) => pick.section === section).map(({ column }) => [column, sign] as const);
		others.forEach((other, index) => {
			draft.addRow(`equal section ${section + 1}, form ${index + 2}`, 0, 0, [
				...inSection(first, 1),
				...inSection(other, -1),
			]);
		});
	});
}

/** A row that the goal "nearest" may break, each unit at a price. */
function addElastic(
	draft: ProgramDraft,
	plan: ProgramPlan,
	path: string,
	form: number,
	lower: number,
	upper: number,
	terms: readonly (readonly [number, number])[],
	price: number,
): void {
	if (plan.goal !== 'nearest') {
		draft.addRow(path, lower, upper, terms);
		return;
	}
	const slack = (name: string, sign: number, isNeeded: boolean): readonly (readonly [number, number])[] =>
		isNeeded ? [[draft.addColumn(`${name} ${path} ${form}`, 0, 100_000, price), sign]] : [];
	draft.addRow(path, lower, upper, [
		...terms,
		...slack('short of', 1, lower > -Infinity),
		...slack('beyond', -1, upper < Infinity),
	]);
}

/** What one unit of a requirement is worth when not all can be kept: whole forms first, then cells, then the finer wishes. */
function priceOf({ path, unit }: Requirement): number {
	if (unit === 'mean' || unit === 'words') return 1;
	if (path === '/items' || path.startsWith('/sections')) return 100;
	return path.startsWith('/cells') ? 40 : 20;
}

/** For each measure a lowest and highest value over the forms, apart by at most the band; when balancing, their distance costs. */
function addMeasures(draft: ProgramDraft, plan: ProgramPlan, byForm: readonly (readonly Pick[])[]): void {
	const { instance, goal } = plan;
	if (byForm.length < 2 && !instance.like) return;
	for (const measure of instance.measures) {
		if (goal === 'even') {
			addEqualMeasure(draft, plan, measure, byForm);
			continue;
		}
		if (goal !== 'balanced' && measure.band === undefined) continue;
		addMeasure(draft, plan, measure, byForm, goal === 'balanced' ? measure.weight : 0);
	}
}

/** The measure is the same on every form, and on the given form. */
function addEqualMeasure(
	draft: ProgramDraft,
	plan: ProgramPlan,
	measure: Measure,
	byForm: readonly (readonly Pick[])[],
): void {
	const { instance } = plan;
	const termsOf = (mine: readonly Pick[], sign: number) =>
		mine.map(({ column, traits }) => [column, sign * measure.worth(traits)] as const);
	const [first, ...others] = byForm;
	if (!first) return;
	for (const other of others)
		draft.addRow(`equal ${measure.label}`, 0, 0, [...termsOf(first, 1), ...termsOf(other, -1)]);
	if (!instance.like) return;
	const value =
		instance.like.reduce((sum, traits) => sum + measure.worth(traits), 0) - sumFixed(instance.anchors, measure.worth);
	draft.addRow(`equal ${measure.label}`, value, value, termsOf(first, 1));
}

function addMeasure(
	draft: ProgramDraft,
	plan: ProgramPlan,
	measure: Measure,
	byForm: readonly (readonly Pick[])[],
	weight: number,
): void {
	const { instance } = plan;
	const lowest = draft.addColumn(`lowest ${measure.label}`, 0, 100_000, -weight);
	const highest = draft.addColumn(`highest ${measure.label}`, 0, 100_000, weight);
	const fixed = sumFixed(instance.anchors, measure.worth);
	for (const mine of byForm) {
		const terms = mine.map(({ column, traits }) => [column, measure.worth(traits)] as const);
		draft.addRow(`lowest ${measure.label}`, -fixed, Infinity, [...terms, [lowest, -1]]);
		draft.addRow(`highest ${measure.label}`, -Infinity, -fixed, [...terms, [highest, -1]]);
	}
	if (instance.like) {
		const value = instance.like.reduce((sum, traits) => sum + measure.worth(traits), 0);
		draft.addRow(`lowest ${measure.label}`, -Infinity, value, [[lowest, 1]]);
		draft.addRow(`highest ${measure.label}`, value, Infinity, [[highest, 1]]);
	}
	if (measure.band === undefined) return;
	addElastic(
		draft,
		plan,
		bandPath(measure),
		0,
		-Infinity,
		measure.band,
		[
			[highest, 1],
			[lowest, -1],
		],
		2,
	);
}

/** Whole steps by which the summed estimates of a form miss the target; less than a step costs nothing. */
function addTarget(draft: ProgramDraft, plan: ProgramPlan, byForm: readonly (readonly Pick[])[]): void {
	const { difficulty } = plan.instance.blueprint;
	if (!difficulty) return;
	const target = Math.round(difficulty.target * 10);
	const worth = (traits: ItemTraits): number => Math.round(10 * traits.difficulty) - target;
	const fixed = sumFixed(plan.instance.anchors, worth);
	byForm.forEach((mine, form) => {
		const missed = draft.addColumn(
			`steps from target, form ${form + 1}`,
			0,
			plan.goal === 'even' ? 0 : 100_000,
			plan.copies,
		);
		const terms = mine.map(({ column, traits }) => [column, worth(traits)] as const);
		draft.addRow('steps above target', -Infinity, 9 - fixed, [...terms, [missed, -10]]);
		draft.addRow('steps below target', -9 - fixed, Infinity, [...terms, [missed, 10]]);
	});
}
