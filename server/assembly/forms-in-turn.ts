import type { Requirement } from '../../item-bank/forms/requirements.ts';
import type { Random } from '../../item-bank/random/random.ts';
import { classesOf, type ItemClass } from './classes.ts';
import { type ProgramPlan, writeFormProgram } from './form-program.ts';
import type { Instance } from './instance.ts';
import { type PickedItem, pickItems } from './pick-items.ts';
import { countsOf } from './program-counts.ts';
import type { Solution } from './solver.ts';
import type { Workshop } from './workshop.ts';

/**
 * Chooses forms one after the other from a large bank: the first by itself, each next one with every measure as on the first, or
 * if that cannot be within the bands. Each program has the unknowns of one form only. Undefined when one of them has no
 * solution, which proves nothing, since earlier forms took their items regardless.
 */
export function chooseInTurn(
	workshop: Workshop,
	solve: (plan: ProgramPlan) => Solution,
	random: Random,
): readonly PickedItem[] | undefined {
	const { instance } = workshop;
	const all = classesOf(instance, 'coarse');
	const picked: PickedItem[] = [];
	for (let form = 0; form < instance.count; form += 1) {
		const one = oneForm(instance, form, picked);
		const classes = classesLeft(all, instance, form, picked);
		const goals = form === 0 && !instance.like ? (['balanced'] as const) : (['even', 'any'] as const);
		let next: readonly PickedItem[] | undefined;
		for (const goal of goals) {
			const plan: ProgramPlan = { instance: one, classes, forms: 1, copies: 1, grain: 'coarse', goal };
			const solution = solve(plan);
			if (!('values' in solution)) continue;
			const counts = countsOf(writeFormProgram(plan), solution.values, plan).map((count) => ({ ...count, form }));
			next = pickItems(workshop.ledger, classes, counts, random).picked;
			break;
		}
		if (!next) return undefined;
		picked.push(...next);
	}
	return picked;
}

/** The instance of one form: as many items in each section as the first form has, and like it, or like the given form. */
function oneForm(instance: Instance, form: number, picked: readonly PickedItem[]): Instance {
	const first = picked.filter((one) => one.form === 0);
	const traits = first.flatMap(({ item }) => instance.items[item]?.traits ?? []);
	const like =
		instance.like ?? (form === 0 ? undefined : [...traits, ...instance.anchors.map((anchor) => anchor.traits)]);
	const sections = instance.blueprint.sections.map((_, section): Requirement => {
		const fixed = instance.anchors.filter((anchor) => anchor.section === section).length;
		const size = first.filter((one) => one.section === section).length + fixed;
		return {
			path: `same section ${section + 1}`,
			words: '',
			unit: 'items',
			min: size,
			max: size,
			worth: (_item, at) => (at === section ? 1 : 0),
		};
	});
	return {
		...instance,
		count: 1,
		like,
		requirements: form === 0 ? instance.requirements : [...instance.requirements, ...sections],
	};
}

/** Classes without the items already taken and without those forced onto other forms; a form that is not named is the first. */
function classesLeft(
	all: readonly ItemClass[],
	{ wanted }: Instance,
	form: number,
	picked: readonly PickedItem[],
): readonly ItemClass[] {
	const taken = new Set(picked.map(({ item }) => item));
	const isElsewhere = (index: number | undefined): boolean =>
		index !== undefined && (wanted[index]?.form ?? 0) !== form;
	return all
		.filter((one) => !isElsewhere(one.wanted))
		.map((one) => ({ ...one, members: one.members.filter((member) => !taken.has(member)) }))
		.filter(({ members }) => members.length > 0);
}
