import type { ItemTraits } from '../../item-bank/forms/item-traits.ts';
import { orderBreaches } from '../../item-bank/forms/order-breaches.ts';
import type { Random } from '../../item-bank/random/random.ts';
import type { Instance } from './instance.ts';
import type { PickedItem } from './pick-items.ts';

/** The items of a form in order, section by section. */
export type ArrangedForm = readonly (readonly ItemTraits[])[];

/** Forms in order, and how many places break an order rule. */
export interface Arrangement {
	readonly forms: readonly ArrangedForm[];
	readonly breaches: number;
}

/** Rounds of exchanging neighbours before an order is taken as it is. */
const rounds = 60;

/**
 * Puts chosen items in order: anchors at the same places on every form, easier before harder where the blueprint asks for it,
 * and items of one difficulty so that answers do not repeat in a row, as far as exchanging can bring it.
 */
export function arrangeItems(instance: Instance, picked: readonly PickedItem[], random: Random): Arrangement {
	const { blueprint, anchors, items } = instance;
	const isFree = blueprint.order?.within === 'free';
	const bySection = (form: number, section: number): readonly ItemTraits[] => {
		const mine = picked.filter((one) => one.form === form && one.section === section);
		const traits = random.shuffle(mine.flatMap(({ item }) => items[item]?.traits ?? []));
		return isFree ? traits : [...traits].sort((a, b) => a.difficulty - b.difficulty);
	};
	const anchorIds = new Set(anchors.map(({ traits }) => traits.id));
	const sections = blueprint.sections.map((_, section) => {
		const perForm = Array.from({ length: instance.count }, (_unused, form) => bySection(form, section));
		const fixed = anchors.filter((anchor) => anchor.section === section).map(({ traits }) => traits);
		return insertAnchors(perForm, fixed, isFree);
	});
	const forms = Array.from({ length: instance.count }, (_, form) => sections.map((perForm) => perForm[form] ?? []));
	const settled = forms.map((form) => settleNeighbours(form, instance, anchorIds));
	const breaches = settled.reduce((sum, form) => sum + orderBreaches(form, blueprint.order ?? {}, anchorIds).length, 0);
	return { forms: settled, breaches };
}

/** Gives every anchor of a section one place: where it stands by difficulty, averaged over the forms. */
function insertAnchors(
	perForm: readonly (readonly ItemTraits[])[],
	fixed: readonly ItemTraits[],
	isFree: boolean,
): readonly (readonly ItemTraits[])[] {
	const sorted = isFree ? fixed : [...fixed].sort((a, b) => a.difficulty - b.difficulty);
	const places = sorted.map((anchor, index) => {
		const easier = perForm.map((items) => items.filter(({ difficulty }) => difficulty < anchor.difficulty).length);
		const before = isFree
			? Math.floor(((perForm[0]?.length ?? 0) * (index + 1)) / (sorted.length + 1))
			: Math.round(easier.reduce((sum, count) => sum + count, 0) / Math.max(1, perForm.length));
		return before + index;
	});
	return perForm.map((items) => {
		const result = [...items];
		sorted.forEach((anchor, index) => result.splice(places[index] ?? 0, 0, anchor));
		return result;
	});
}

function settleNeighbours(form: ArrangedForm, instance: Instance, anchorIds: ReadonlySet<string>): ArrangedForm {
	const rules = instance.blueprint.order ?? {};
	if (rules.sameAnswerInARow === undefined) return form;
	const count = (candidate: ArrangedForm): number => orderBreaches(candidate, rules, anchorIds).length;
	let best = form;
	let least = count(form);
	for (let round = 0; round < rounds && least > 0; round += 1) {
		const better = exchanges(best, rules.within === 'free', anchorIds).find((candidate) => count(candidate) < least);
		if (!better) break;
		best = better;
		least = count(better);
	}
	return best;
}

/** Every form that differs by exchanging two items of a section that may change places. */
function exchanges(form: ArrangedForm, isFree: boolean, anchorIds: ReadonlySet<string>): readonly ArrangedForm[] {
	return form.flatMap((items, section) =>
		items.flatMap((first, low) =>
			items.slice(low + 1).flatMap((second, offset): readonly ArrangedForm[] => {
				if (anchorIds.has(first.id) || anchorIds.has(second.id)) return [];
				if (!isFree && first.difficulty !== second.difficulty) return [];
				const changed = [...items];
				changed[low] = second;
				changed[low + 1 + offset] = first;
				return [form.map((other, index) => (index === section ? changed : other))];
			}),
		),
	);
}
