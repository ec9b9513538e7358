import { groupsAmong } from '../../item-bank/forms/item-groups.ts';
import type { Instance } from './instance.ts';

/** Counts, for each form, how full every group is that a sharing rule limits. */
export interface GroupLedger {
	/** Takes every item off again, anchors apart. */
	readonly clear: () => void;
	/** Puts an item, by its place in the instance's items, on a form, or with −1 takes it off. */
	readonly enter: (form: number, item: number, sign: 1 | -1) => void;
	/** By how many the excess would grow. */
	readonly costOfAdding: (form: number, item: number) => number;
	/** Whether the item is in a group that its form holds too many of. */
	readonly isOver: (form: number, item: number) => boolean;
	/** Items beyond what the rules allow, over all groups and forms. */
	readonly excess: () => number;
}

/** An empty ledger over the items and anchors of an instance; the anchors are entered on every form. */
export function openLedger(instance: Instance): GroupLedger {
	const { anchors, count, items, rules } = instance;
	const all = [...items.map(({ traits }) => traits), ...anchors.map(({ traits }) => traits)];
	const groups = groupsAmong(all, rules);
	const groupsOf: number[][] = all.map(() => []);
	groups.forEach(({ members }, group) => {
		for (const member of members) groupsOf[member]?.push(group);
	});
	const most = Int32Array.from(groups, ({ rule }) => rule.most);
	const held = Array.from({ length: count }, () => new Int32Array(groups.length));
	const none: readonly number[] = [];
	let excess = 0;
	const enter = (form: number, item: number, sign: 1 | -1): void => {
		const counts = held[form];
		if (!counts) return;
		for (const group of groupsOf[item] ?? none) {
			const before = counts[group] ?? 0;
			const limit = most[group] ?? 0;
			excess += Math.max(0, before + sign - limit) - Math.max(0, before - limit);
			counts[group] = before + sign;
		}
	};
	const clear = (): void => {
		excess = 0;
		held.forEach((counts, form) => {
			counts.fill(0);
			anchors.forEach((_, at) => enter(form, items.length + at, 1));
		});
	};
	clear();
	const isFull = (form: number, group: number, extra: number): boolean =>
		(held[form]?.[group] ?? 0) + extra > (most[group] ?? 0);
	return {
		clear,
		enter,
		costOfAdding: (form, item) => (groupsOf[item] ?? none).filter((group) => isFull(form, group, 1)).length,
		isOver: (form, item) => (groupsOf[item] ?? none).some((group) => isFull(form, group, 0)),
		excess: () => excess,
	};
}
