import type { GroupRule } from '../../item-bank/forms/item-groups.ts';
import type { ItemTraits } from '../../item-bank/forms/item-traits.ts';
import { difficultyLevels } from '../../item-bank/forms/measures.ts';
import type { Instance } from './instance.ts';

/** Items that a blueprint cannot tell apart: one unknown in the program instead of many. */
export interface ItemClass {
	/** Places in the instance's items, in order of preference. */
	readonly members: readonly number[];
	/** Any of them: all have these traits as far as the program looks. */
	readonly traits: ItemTraits;
	readonly sections: readonly number[];
	/** For a class without members, which stands for items still to be written: what one of them costs. */
	readonly price?: number;
	/** Whether its one item may stand on several forms. */
	readonly isShared?: boolean;
	/** The forced item this class is made of, as its place among the wanted. */
	readonly wanted?: number;
}

/**
 * How closely classes look. near: what plans count, but not the exact estimate and reading load, for which the class stands
 * with its mean; coarse: everything ranges and measures count, and the setting where settings are limited; fine: also every
 * group that a sharing rule limits, so that a program can keep those rules exactly.
 */
export type Grain = 'near' | 'coarse' | 'fine';

/** Groups the items of an instance into classes. Items that no section admits are left out; forced items are classes of their own. */
export function classesOf(instance: Instance, grain: Grain): readonly ItemClass[] {
	const wanted = new Map(instance.wanted.map(({ id }, index) => [id, index]));
	const rules = rulesSeen(instance.rules, grain);
	const classes = new Map<string, Draft>();
	instance.items.forEach(({ traits, sections }, index) => {
		if (sections.length === 0) return;
		const forced = wanted.get(traits.id);
		const isShared = instance.shared.has(traits.id);
		const key = forced === undefined && !isShared ? classKey(traits, rules, grain) : `alone ${traits.id}`;
		const found = classes.get(key);
		if (found) found.members.push(index);
		else
			classes.set(key, {
				members: [index],
				traits,
				sections,
				...(forced === undefined ? {} : { wanted: forced }),
				...(isShared ? { isShared } : {}),
			});
	});
	const all = [...classes.values()];
	return grain === 'near' ? all.map((one) => ({ ...one, traits: meanTraits(one, instance) })) : all;
}

interface Draft {
	readonly members: number[];
	readonly traits: ItemTraits;
	readonly sections: readonly number[];
	readonly wanted?: number;
	readonly isShared?: boolean;
}

/** The sharing rules whose groups classes of a grain lie wholly inside or outside of, so that programs can keep them. */
export function rulesSeen<T extends { readonly path: string }>(rules: readonly T[], grain: Grain): readonly T[] {
	if (grain === 'fine') return rules;
	const paths = grain === 'coarse' ? ['/exclusions/likeMost', '/exclusions/settingMost'] : ['/exclusions/likeMost'];
	return rules.filter(({ path }) => paths.includes(path));
}

function classKey(traits: ItemTraits, rules: readonly GroupRule[], grain: Grain): string {
	const { standard, model, kind, dok, points, role, shape, crossesZero, difficulty, reading } = traits;
	const level = difficultyLevels.findIndex(({ to }) => difficulty <= to);
	const exact = grain === 'near' ? [level] : [difficulty, reading];
	const seen = [standard, model, kind, dok, points, role, shape, crossesZero, ...exact].join('|');
	return rules.reduce((key, rule) => `${key}|${rule.groupsOf(traits).join('&')}`, seen);
}

/** Mean estimate in tenths and mean reading load in fives, so that sums stay whole. */
function meanTraits({ members, traits }: Draft, { items }: Instance): ItemTraits {
	const mean = (of: (one: ItemTraits) => number): number =>
		members.reduce((sum, member) => sum + of(items[member]?.traits ?? traits), 0) / members.length;
	return {
		...traits,
		difficulty: Math.round(mean(({ difficulty }) => difficulty) * 10) / 10,
		reading: Math.round(mean(({ reading }) => reading) / 5) * 5,
	};
}
