import type { Random } from '../../item-bank/random/random.ts';
import { type FormTally, openTally } from './form-tally.ts';
import { type GroupLedger, openLedger } from './group-ledger.ts';
import type { Instance } from './instance.ts';

/** One place of a form while items are tried in it. */
export interface Slot {
	readonly form: number;
	readonly section: number;
	/** Place in the instance's items. */
	item: number;
}

/** Slots with the items they are to take; none when an exchange is not possible. */
export type Moves = readonly (readonly [Slot, number])[];

/** What trying items needs, set up once for an instance because it looks at every item of the bank. */
export interface Workshop {
	readonly instance: Instance;
	readonly tally: FormTally;
	readonly ledger: GroupLedger;
	/** Clears the counts and enters the items of the slots. */
	readonly start: (slots: readonly Slot[]) => void;
	/** Draws an exchange: between two slots, with an unused item of the same sort, or with any unused item the section admits. */
	readonly draw: (slots: readonly Slot[], random: Random) => Moves;
	/** Carries moves out; doing so with the items of before takes them back. */
	readonly move: (moves: Moves) => void;
}

/** Sets up the counts and lists for trying items of an instance. */
export function openWorkshop(instance: Instance): Workshop {
	const tally = openTally(instance);
	const ledger = openLedger(instance);
	const enter = ({ form, item }: Slot, sign: 1 | -1): void => {
		tally.enter(form, item, sign);
		ledger.enter(form, item, sign);
	};
	return {
		instance,
		tally,
		ledger,
		start: (slots) => {
			tally.clear();
			ledger.clear();
			for (const slot of slots) enter(slot, 1);
		},
		draw: openExchanges(instance),
		move: (moves) => {
			for (const [slot] of moves) enter(slot, -1);
			for (const [slot, item] of moves) {
				slot.item = item;
				enter(slot, 1);
			}
		},
	};
}

function openExchanges(instance: Instance): Workshop['draw'] {
	const { blueprint, items, wanted } = instance;
	const forced = new Set(wanted.map(({ id }) => id));
	const isForced = items.map(({ traits }) => forced.has(traits.id));
	const admits = (item: number, section: number): boolean => items[item]?.sections.includes(section) ?? false;
	const open = items.flatMap((_, item) => (isForced[item] ? [] : [item]));
	const admitted = blueprint.sections.map((_, section) => open.filter((item) => admits(item, section)));
	const sorts = items.map(
		({ traits }) => `${traits.standard} ${traits.model} ${traits.kind} ${traits.dok} ${traits.points}`,
	);
	const alike = new Map<string, number[]>();
	for (const item of open) {
		const sort = sorts[item] ?? '';
		const list = alike.get(sort);
		if (list) list.push(item);
		else alike.set(sort, [item]);
	}
	return (slots, random) => {
		if (slots.length === 0) return [];
		const slot = random.pick(slots);
		if (isForced[slot.item]) return [];
		const kind = random.nextInteger(0, 9);
		if (kind < 3) {
			const other = random.pick(slots);
			const isPossible =
				other !== slot && !isForced[other.item] && admits(other.item, slot.section) && admits(slot.item, other.section);
			return isPossible
				? [
						[slot, other.item],
						[other, slot.item],
					]
				: [];
		}
		const list = (kind < 7 ? alike.get(sorts[slot.item] ?? '') : admitted[slot.section]) ?? [];
		if (list.length === 0) return [];
		const item = random.pick(list);
		const isUsed = slots.some((one) => one.item === item);
		return isUsed || !admits(item, slot.section) ? [] : [[slot, item]];
	};
}
