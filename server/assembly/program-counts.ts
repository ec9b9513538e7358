import { createRandom } from '../../item-bank/random/random.ts';
import type { FormProgram, ProgramPlan } from './form-program.ts';
import type { ClassCount, PickedItem } from './pick-items.ts';

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

/** Values of the counting unknowns that stand for chosen items, to start a search from. */
export function startFrom(
	{ picks }: FormProgram,
	{ classes }: Pick<ProgramPlan, 'classes'>,
	picked: readonly PickedItem[],
): { readonly columns: readonly number[]; readonly values: readonly number[] } {
	const classOf = new Map(classes.flatMap(({ members }, index) => members.map((member) => [member, index] as const)));
	const counts = new Map<string, number>();
	for (const { form, section, item } of picked) {
		const key = `${form} ${section} ${classOf.get(item)}`;
		counts.set(key, (counts.get(key) ?? 0) + 1);
	}
	return {
		columns: picks.map(({ column }) => column),
		values: picks.map(({ form, section, class: index }) => counts.get(`${form} ${section} ${index}`) ?? 0),
	};
}
