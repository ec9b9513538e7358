import { createRandom, type Random } from '../random/random.ts';

/** Numbers one place of an item may hold: sizes from least to most in steps, with the signs allowed. */
export interface NumberSlot {
	readonly least: number;
	readonly most: number;
	/** 1 when left out; sizes are multiples of it. */
	readonly step?: number;
	readonly sign: 'plus' | 'minus' | 'any';
}

/** A rule that the numbers of an item keep together. */
export interface NumberRule {
	/** In words, such as: the numbers differ in size. */
	readonly name: string;
	readonly holds: (numbers: readonly number[]) => boolean;
}

/** What the numbers of an item are drawn from. */
export interface NumberPlan {
	readonly slots: readonly NumberSlot[];
	/** In the order in which they are named when nothing is left. */
	readonly rules: readonly NumberRule[];
}

/** Draws before the numbers are listed, where they are few, or given up. */
const mostDraws = 300;
/** Combinations listed for one draw at most. */
const mostListed = 20_000;
/** Combinations looked through for an obstacle, a fraction of a second of work. */
const mostSearched = 250_000;

/** Numbers that keep all rules; undefined when there are none, or none among some hundred draws. */
export function drawNumbers(random: Random, { slots, rules }: NumberPlan): readonly number[] | undefined {
	if (slots.some((slot) => countSizes(slot) < 1)) return undefined;
	for (let draw = 0; draw < mostDraws; draw += 1) {
		const numbers = slots.map((slot) => drawNumber(random, slot));
		if (rules.every(({ holds }) => holds(numbers))) return numbers;
	}
	if (countCombinations(slots) > mostListed) return undefined;
	const kept: (readonly number[])[] = [];
	visit(slots, mostListed, (numbers) => {
		if (rules.every(({ holds }) => holds(numbers))) kept.push(numbers);
		return false;
	});
	return kept.length > 0 ? random.pick(kept) : undefined;
}

/** One number of a slot, every one equally likely. */
export function drawNumber(random: Random, slot: NumberSlot): number {
	const { step = 1, sign } = slot;
	const size = step * random.nextInteger(Math.ceil(slot.least / step), Math.floor(slot.most / step));
	if (sign === 'plus') return size;
	return sign === 'minus' || random.nextInteger(0, 1) === 1 ? -size : size;
}

/**
 * The first rule that, with those before it, leaves no numbers, in words; undefined when numbers exist. Listed in full
 * up to 250,000 combinations, beyond that held against as many spread over all sizes.
 */
export function findObstacle({ slots, rules }: NumberPlan): string | undefined {
	const empty = slots.find((slot) => countSizes(slot) < 1);
	if (empty) {
		const multiples = (empty.step ?? 1) > 1 ? ` that are multiples of ${empty.step}` : '';
		return `sizes from ${empty.least} to ${empty.most}${multiples}`;
	}
	// Of the rules broken by the numbers that come farthest, the first is the one nothing passes.
	let farthest = -1;
	visit(slots, mostSearched, (numbers) => {
		const broken = rules.findIndex(({ holds }) => !holds(numbers));
		if (broken === -1) {
			farthest = rules.length;
			return true;
		}
		farthest = Math.max(farthest, broken);
		return false;
	});
	return rules[farthest]?.name;
}

function countCombinations(slots: readonly NumberSlot[]): number {
	return slots.reduce((product, slot) => product * countSizes(slot) * (slot.sign === 'any' ? 2 : 1), 1);
}

function countSizes({ least, most, step = 1 }: NumberSlot): number {
	return Math.floor(most / step) - Math.ceil(least / step) + 1;
}

/** Combinations that can still be counted exactly, with a step added. */
const mostCounted = 2 ** 52;

/** Calls with every combination, or with as many as allowed; stops when told. */
function visit(slots: readonly NumberSlot[], most: number, see: (numbers: readonly number[]) => boolean): void {
	const lists = slots.map(listNumbers);
	const total = countCombinations(slots);
	if (total > mostCounted) {
		const random = createRandom('combinations');
		for (let seen = 0; seen < most; seen += 1) if (see(lists.map((list) => random.pick(list)))) return;
		return;
	}
	// A stride that shares no factor with the total reaches combinations all over, not only those of one first number.
	const stride = total <= most ? 1 : coprimeStride(total);
	let place = 0;
	for (let seen = 0; seen < Math.min(total, most); seen += 1) {
		let rest = place;
		const numbers = lists.map((list) => {
			const at = rest % list.length;
			rest = Math.floor(rest / list.length);
			return list[at] ?? 0;
		});
		if (see(numbers)) return;
		place = (place + stride) % total;
	}
}

function listNumbers({ least, most, step = 1, sign }: NumberSlot): readonly number[] {
	const sizes: number[] = [];
	for (let size = Math.ceil(least / step) * step; size <= most; size += step) sizes.push(size);
	if (sign === 'plus') return sizes;
	const negatives = sizes.map((size) => -size);
	return sign === 'minus' ? negatives : [...negatives, ...sizes];
}

function coprimeStride(total: number): number {
	let stride = Math.floor(total * 0.618);
	while (greatestCommonDivisor(stride, total) !== 1) stride += 1;
	return stride;
}

function greatestCommonDivisor(a: number, b: number): number {
	return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** Slots of the same sizes with the signs of a text such as -+. */
export function signSlots(signs: string, least: number, most: number): readonly NumberSlot[] {
	return [...signs].map((sign) => ({ least, most, sign: sign === '-' ? 'minus' : 'plus' }));
}
