import { groupsAmong } from '../../item-bank/forms/item-groups.ts';
import type { Instance } from './instance.ts';

/** Counts, for each form, how full every group is. */
export interface GroupLedger {
	/** Enters an item, by its place in the instance's items, on a form. */
	readonly add: (form: number, item: number) => void;
	readonly remove: (form: number, item: number) => void;
	/** By how many the excess would grow. */
	readonly costOfAdding: (form: number, item: number) => number;
	/** Whether the item is in a group that its form holds too many of. */
	readonly isOver: (form: number, item: number) => boolean;
	/** Items beyond what the rules allow, over all groups and forms. */
	readonly excess: () => number;
}

/** An empty ledger over the items and anchors of an instance; the anchors are entered on every form. */
export function openLedger(instance: Instance): GroupLedger {
	const { items, anchors } = instance;
	const all = [...items.map(({ traits }) => traits), ...anchors.map(({ traits }) => traits)];
	const groups = groupsAmong(all, instance.rules);
	const groupsOf: number[][] = all.map(() => []);
	groups.forEach(({ members }, group) => {
		for (const member of members) groupsOf[member]?.push(group);
	});
	const most = groups.map(({ rule }) => rule.most);
	const held = Array.from({ length: instance.count }, () => new Int32Array(groups.length));
	const move = (form: number, item: number, by: number): void => {
		const counts = held[form];
		if (counts) for (const group of groupsOf[item] ?? []) counts[group] = (counts[group] ?? 0) + by;
	};
	for (let form = 0; form < instance.count; form += 1) anchors.forEach((_, at) => move(form, items.length + at, 1));
	const full = (form: number, group: number, extra: number): boolean =>
		(held[form]?.[group] ?? 0) + extra > (most[group] ?? 0);
	return {
		add: (form, item) => move(form, item, 1),
		remove: (form, item) => move(form, item, -1),
		costOfAdding: (form, item) => (groupsOf[item] ?? []).filter((group) => full(form, group, 1)).length,
		isOver: (form, item) => (groupsOf[item] ?? []).some((group) => full(form, group, 0)),
		excess: () =>
			held.reduce(
				(sum, counts) => counts.reduce((total, value, group) => total + Math.max(0, value - (most[group] ?? 0)), sum),
				0,
			),
	};
}
