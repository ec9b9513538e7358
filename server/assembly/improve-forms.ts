import type { Random } from '../../item-bank/random/random.ts';
import type { Instance } from './instance.ts';
import type { PickedItem } from './pick-items.ts';
import type { Moves, Slot, Workshop } from './workshop.ts';

/** Chosen items with what they cost. */
export interface ImprovedForms {
	readonly picked: readonly PickedItem[];
	/** How far ranges and bands are missed; 0 when all hold. */
	readonly missed: number;
	/** Items beyond what sharing rules allow. */
	readonly excess: number;
	readonly unevenness: number;
	/** Choice items by which the fullest and the emptiest key place of each form differ, summed over the forms. */
	readonly keySpread: number;
}

/** How long to improve. */
export interface ImproveOptions {
	/** Exchanges tried. */
	readonly steps: number;
	/** Exchanges tried before the walk may stop at the goal: it looks for other forms as even, with keys better spread. */
	readonly least: number;
	/** Unevenness below which no forms can be. */
	readonly goal: number;
	/** Whether the last of several equally good forms is to be returned instead of the first. */
	readonly isOtherWanted?: boolean;
}

/** What an item too many, or one short, costs against unevenness while the walk lasts. */
const excessPrice = 6;
const missedPrice = 5;
/** What a key too many at one place costs. */
const spreadPrice = 0.3;

/**
 * Improves chosen items by exchanging single ones, with the unused or between forms: a walk that at first also goes uphill. On
 * the way ranges, bands and sharing rules may be broken at a price; what is returned is never worse than the start in what is
 * missed, then in excess, then in unevenness. The same source of draws gives the same forms.
 */
export function improveForms(
	workshop: Workshop,
	start: readonly PickedItem[],
	random: Random,
	options: ImproveOptions,
): ImprovedForms {
	const { draw, instance, ledger, move, tally } = workshop;
	const slots: readonly Slot[] = start.map(({ form, section, item }) => ({ form, section, item }));
	workshop.start(slots);
	const look = (): ImprovedForms => ({
		picked: slots,
		missed: tally.missed(),
		excess: ledger.excess(),
		unevenness: tally.unevenness(),
		keySpread: keySpread(instance, slots),
	});
	const energyOf = ({ missed, excess, unevenness, keySpread: spread }: ImprovedForms): number =>
		unevenness + excessPrice * excess + missedPrice * missed + spreadPrice * spread;
	const keep = (forms: ImprovedForms): ImprovedForms => ({ ...forms, picked: slots.map((slot) => ({ ...slot })) });
	let now = look();
	let best = keep(now);
	for (let step = 0; step < options.steps; step += 1) {
		if (isAtGoal(best, options.goal) && step >= options.least) break;
		// Threshold accepting with a falling, drawn threshold: no exponential, whose last digits could differ between machines.
		const threshold = (4 * (1 - step / options.steps) * random.nextInteger(0, 1000)) / 1000;
		const moves = draw(slots, random);
		if (moves.length === 0) continue;
		const before = moves.map(([slot]) => slot.item);
		move(moves);
		const next = look();
		if (energyOf(next) - energyOf(now) + wear(instance, moves, before) > threshold) {
			move(moves.map(([slot], at) => [slot, before[at] ?? slot.item]));
			continue;
		}
		now = next;
		const order = compareImproved(now, best);
		if (order < 0 || (order === 0 && options.isOtherWanted === true)) best = keep(now);
	}
	return best;
}

/** Negative when the first is better: in what is missed, then in excess, unevenness and the spread of keys. */
export function compareImproved(a: ImprovedForms, b: ImprovedForms): number {
	return a.missed - b.missed || a.excess - b.excess || a.unevenness - b.unevenness || a.keySpread - b.keySpread;
}

function isAtGoal({ missed, excess, unevenness }: ImprovedForms, goal: number): boolean {
	return missed === 0 && excess === 0 && unevenness <= goal;
}

/** Among equals, items that were used less often are preferred. */
function wear({ items }: Instance, moves: Moves, before: readonly number[]): number {
	const usesOf = (item: number): number => Math.min(10, items[item]?.uses ?? 0);
	return moves.reduce((sum, [slot], at) => sum + usesOf(slot.item) - usesOf(before[at] ?? slot.item), 0) / 100;
}

function keySpread({ anchors, count, items }: Instance, slots: readonly Slot[]): number {
	const counts = new Int32Array(count * 4);
	for (const { traits } of anchors) for (let form = 0; form < count; form += 1) countKey(counts, form, traits.keyPlace);
	for (const { form, item } of slots) countKey(counts, form, items[item]?.traits.keyPlace);
	let total = 0;
	for (let form = 0; form < count; form += 1) {
		const places = counts.subarray(form * 4, form * 4 + 4);
		total += Math.max(...places) - Math.min(...places);
	}
	return total;
}

function countKey(counts: Int32Array, form: number, place: number | undefined): void {
	if (place !== undefined && place < 4) counts[form * 4 + place] = (counts[form * 4 + place] ?? 0) + 1;
}
