import type { GroupRule } from '../../item-bank/forms/item-groups.ts';
import type { ItemTraits } from '../../item-bank/forms/item-traits.ts';
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
	/** The forced item this class is made of, as its place among the wanted. */
	readonly wanted?: number;
}

/**
 * Groups the items of an instance into classes. Coarse classes look at what ranges and measures count, and at the setting
 * where settings are limited; fine classes also at every group that a sharing rule limits, so that the program can keep those
 * rules exactly. Items that no section admits are left out. Forced items are classes of their own.
 */
export function classesOf(instance: Instance, isFine: boolean): readonly ItemClass[] {
	const wanted = new Map(instance.wanted.map(({ id }, index) => [id, index]));
	const rules = isFine ? instance.rules : instance.rules.filter(({ path }) => path === '/exclusions/settingMost');
	const classes = new Map<
		string,
		{ members: number[]; traits: ItemTraits; sections: readonly number[]; wanted?: number }
	>();
	instance.items.forEach(({ traits, sections }, index) => {
		if (sections.length === 0) return;
		const forced = wanted.get(traits.id);
		const key = forced === undefined ? classKey(traits, rules) : `forced ${traits.id}`;
		const found = classes.get(key);
		if (found) found.members.push(index);
		else classes.set(key, { members: [index], traits, sections, ...(forced === undefined ? {} : { wanted: forced }) });
	});
	return [...classes.values()];
}

function classKey(traits: ItemTraits, rules: readonly GroupRule[]): string {
	const { standard, model, kind, dok, points, role, shape, crossesZero, difficulty, reading } = traits;
	const seen = [standard, model, kind, dok, points, role, shape, crossesZero, difficulty, reading].join('|');
	return rules.reduce((key, rule) => `${key}|${rule.groupsOf(traits).join('&')}`, seen);
}
