import type { Random } from '../../item-bank/random/random.ts';
import type { ItemClass } from './classes.ts';
import type { GroupLedger } from './group-ledger.ts';

/** How many items of a class a section of a form takes. */
export interface ClassCount {
	readonly form: number;
	readonly section: number;
	readonly class: number;
	readonly count: number;
}

/** One place taken by one item of the instance. */
export interface PickedItem {
	readonly form: number;
	readonly section: number;
	/** Place in the instance's items. */
	readonly item: number;
}

/** Items chosen, and by how many the sharing rules are exceeded. */
export interface PickedItems {
	readonly picked: readonly PickedItem[];
	readonly excess: number;
}

interface Slot {
	readonly form: number;
	readonly section: number;
	readonly class: number;
	item: number;
}

/** Steps of repair before a choice is given up. */
const repairSteps = 1500;

/**
 * Chooses items for the counts of each class so that no form breaks a sharing rule: greedily, scarce classes first and
 * preferred items first, then by exchanging items of one class. The same source of draws gives the same choice. An excess
 * above 0 does not prove that there is no choice.
 */
export function pickItems(
	ledger: GroupLedger,
	classes: readonly ItemClass[],
	counts: readonly ClassCount[],
	random: Random,
): PickedItems {
	ledger.clear();
	const free = classes.map(({ members }) => new Set(members));
	const demand = new Map<number, number>();
	for (const { class: index, count } of counts) demand.set(index, (demand.get(index) ?? 0) + count);
	const spare = (index: number): number => (classes[index]?.members.length ?? 0) - (demand.get(index) ?? 0);
	const slots: Slot[] = random
		.shuffle(counts.flatMap(({ count, ...place }) => Array.from({ length: count }, () => ({ ...place, item: -1 }))))
		.map((slot) => ({ ...slot }))
		.sort((a, b) => spare(a.class) - spare(b.class));
	for (const slot of slots) {
		let best = -1;
		let least = Number.POSITIVE_INFINITY;
		for (const item of free[slot.class] ?? []) {
			const added = ledger.costOfAdding(slot.form, item);
			if (added >= least) continue;
			[best, least] = [item, added];
			if (least === 0) break;
		}
		slot.item = best;
		free[slot.class]?.delete(best);
		ledger.enter(slot.form, best, 1);
	}
	repair(slots, free, ledger, random);
	return { picked: slots.map(({ form, section, item }) => ({ form, section, item })), excess: ledger.excess() };
}

function repair(slots: readonly Slot[], free: readonly Set<number>[], ledger: GroupLedger, random: Random): void {
	for (let step = 0; step < repairSteps; step += 1) {
		const over = slots.filter(({ form, item }) => ledger.isOver(form, item));
		if (over.length === 0) return;
		const slot = random.pick(over);
		const options = [...exchangesWithFree(slot, free, ledger), ...exchangesWithOthers(slot, slots, ledger)];
		if (options.length === 0) continue;
		const least = Math.min(...options.map(({ change }) => change));
		// Now and then a step that is no better leads out of a dead end.
		if (least > 0 || (least === 0 && random.nextInteger(0, 3) === 0)) continue;
		random.pick(options.filter(({ change }) => change === least)).apply();
	}
}

interface Exchange {
	readonly change: number;
	readonly apply: () => void;
}

function exchangesWithFree(slot: Slot, free: readonly Set<number>[], ledger: GroupLedger): readonly Exchange[] {
	const mine = slot.item;
	ledger.enter(slot.form, mine, -1);
	const now = ledger.costOfAdding(slot.form, mine);
	const exchanges = [...(free[slot.class] ?? [])].map((item) => ({
		change: ledger.costOfAdding(slot.form, item) - now,
		apply: () => {
			ledger.enter(slot.form, mine, -1);
			ledger.enter(slot.form, item, 1);
			free[slot.class]?.delete(item);
			free[slot.class]?.add(mine);
			slot.item = item;
		},
	}));
	ledger.enter(slot.form, mine, 1);
	return exchanges;
}

function exchangesWithOthers(slot: Slot, slots: readonly Slot[], ledger: GroupLedger): readonly Exchange[] {
	const others = slots.filter((other) => other.class === slot.class && other.form !== slot.form);
	return others.map((other) => {
		const [mine, theirs] = [slot.item, other.item];
		ledger.enter(slot.form, mine, -1);
		ledger.enter(other.form, theirs, -1);
		const now = ledger.costOfAdding(slot.form, mine) + ledger.costOfAdding(other.form, theirs);
		const then = ledger.costOfAdding(slot.form, theirs) + ledger.costOfAdding(other.form, mine);
		ledger.enter(slot.form, mine, 1);
		ledger.enter(other.form, theirs, 1);
		const apply = (): void => {
			ledger.enter(slot.form, mine, -1);
			ledger.enter(other.form, theirs, -1);
			ledger.enter(slot.form, theirs, 1);
			ledger.enter(other.form, mine, 1);
			[slot.item, other.item] = [theirs, mine];
		};
		return { change: then - now, apply };
	});
}
