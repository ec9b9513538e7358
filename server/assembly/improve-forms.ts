import type { Random } from '../../item-bank/random/random.ts';
import { type FormTally, openTally } from './form-tally.ts';
import { type GroupLedger, openLedger } from './group-ledger.ts';
import type { Instance } from './instance.ts';
import type { PickedItem } from './pick-items.ts';

/** Chosen items with what they cost. */
export interface ImprovedForms {
	readonly picked: readonly PickedItem[];
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

interface Slot {
	readonly form: number;
	readonly section: number;
	item: number;
}

/**
 * Improves forms that keep every range by exchanging single items, with the unused or between forms: a walk that at first
 * also goes uphill. On the way ranges, bands and sharing rules may be broken at a price; what is returned keeps all ranges and
 * bands, as the start does, and no more excess than the start. The same source of draws gives the same forms.
 */
export function improveForms(
	instance: Instance,
	start: readonly PickedItem[],
	random: Random,
	options: ImproveOptions,
): ImprovedForms {
	const tally = openTally(instance);
	const ledger = openLedger(instance);
	const slots: readonly Slot[] = start.map((slot) => ({ ...slot }));
	for (const { form, item } of slots) {
		tally.add(form, item);
		ledger.add(form, item);
	}
	const spreadNow = (): number => keySpread(instance, slots);
	const take = (): ImprovedForms => ({
		picked: slots.map((slot) => ({ ...slot })),
		excess: ledger.excess(),
		unevenness: tally.unevenness(),
		keySpread: spreadNow(),
	});
	let best = take();
	const draw = openExchanges(instance, slots, random);
	const energyNow = (): number =>
		tally.unevenness() + excessPrice * ledger.excess() + missedPrice * tally.missed() + spreadPrice * spreadNow();
	let energy = energyNow();
	for (let step = 0; step < options.steps; step += 1) {
		if (best.excess === 0 && best.unevenness <= options.goal && step >= options.least) break;
		// Threshold accepting with a falling, drawn threshold: no exponential, whose last digits could differ between machines.
		const threshold = (4 * (1 - step / options.steps) * random.nextInteger(0, 1000)) / 1000;
		const moves = draw();
		if (moves.length === 0) continue;
		const before = moves.map(([slot]) => slot.item);
		move(moves, tally, ledger);
		const next = energyNow();
		if (next - energy + wear(instance, moves, before) > threshold) {
			move(
				moves.map(([slot], at) => [slot, before[at] ?? slot.item]),
				tally,
				ledger,
			);
			continue;
		}
		energy = next;
		if (tally.missed() > 0 || ledger.excess() > best.excess) continue;
		const excess = ledger.excess();
		const unevenness = tally.unevenness();
		const isBetter = excess < best.excess || unevenness < best.unevenness;
		const isAsGood =
			unevenness === best.unevenness &&
			(spreadNow() < best.keySpread || (options.isOtherWanted === true && spreadNow() === best.keySpread));
		if (isBetter || isAsGood) best = take();
	}
	return best;
}

/** Slots with the items they are to take. */
type Moves = readonly (readonly [Slot, number])[];

/** Draws exchanges: between two slots, with an unused item of the same sort, or with any unused item the section admits. */
function openExchanges(instance: Instance, slots: readonly Slot[], random: Random): () => Moves {
	const forced = new Set(instance.wanted.map(({ id }) => id));
	const isForced = instance.items.map(({ traits }) => forced.has(traits.id));
	const movable = slots.filter(({ item }) => !isForced[item]);
	const admits = (item: number, section: number): boolean => instance.items[item]?.sections.includes(section) ?? false;
	const open = instance.items.flatMap((_, item) => (isForced[item] ? [] : [item]));
	const admitted = instance.blueprint.sections.map((_, section) => open.filter((item) => admits(item, section)));
	const sorts = instance.items.map(
		({ traits }) => `${traits.standard} ${traits.model} ${traits.kind} ${traits.dok} ${traits.points}`,
	);
	const alike = new Map<string, number[]>();
	for (const item of open) {
		const sort = sorts[item] ?? '';
		const list = alike.get(sort);
		if (list) list.push(item);
		else alike.set(sort, [item]);
	}
	return () => {
		if (movable.length === 0) return [];
		const slot = random.pick(movable);
		const kind = random.nextInteger(0, 9);
		if (kind < 3) {
			const other = random.pick(movable);
			const isPossible = other !== slot && admits(other.item, slot.section) && admits(slot.item, other.section);
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

function move(moves: Moves, tally: FormTally, ledger: GroupLedger): void {
	for (const [slot] of moves) {
		tally.remove(slot.form, slot.item);
		ledger.remove(slot.form, slot.item);
	}
	for (const [slot, item] of moves) {
		slot.item = item;
		tally.add(slot.form, item);
		ledger.add(slot.form, item);
	}
}

/** Among equals, items that were used less often are preferred. */
function wear(instance: Instance, moves: Moves, before: readonly number[]): number {
	const usesOf = (item: number): number => Math.min(10, instance.items[item]?.uses ?? 0);
	return moves.reduce((sum, [slot], at) => sum + usesOf(slot.item) - usesOf(before[at] ?? slot.item), 0) / 100;
}

function keySpread(instance: Instance, slots: readonly Slot[]): number {
	const counts = Array.from({ length: instance.count }, () => [0, 0, 0, 0]);
	for (const { traits } of instance.anchors) for (const places of counts) countKey(places, traits.keyPlace);
	for (const { form, item } of slots) countKey(counts[form] ?? [], instance.items[item]?.traits.keyPlace);
	return counts.reduce((sum, places) => sum + Math.max(...places) - Math.min(...places), 0);
}

function countKey(places: number[], place: number | undefined): void {
	if (place !== undefined && place < 4) places[place] = (places[place] ?? 0) + 1;
}
