import type { ItemTraits } from '../../item-bank/forms/item-traits.ts';
import type { Requirement } from '../../item-bank/forms/requirements.ts';
import type { Instance } from './instance.ts';

/** The sums that requirements and measures look at, kept up to date while items come and go. */
export interface FormTally {
	/** Takes every item off again, anchors apart. */
	readonly clear: () => void;
	/** Puts an item on a form, or with −1 takes it off. */
	readonly enter: (form: number, item: number, sign: 1 | -1) => void;
	/** How far requirements and bands are missed, in items or what stands for about one; 0 when all hold. Sections are not looked at. */
	readonly missed: () => number;
	/** Weighted differences between the forms and steps from the difficulty target: what the integer programs minimise. */
	readonly unevenness: () => number;
}

/**
 * A tally over the items of an instance, anchors entered on every form. It counts in integers and knows nothing of the
 * integer programs, so that the two can be held against each other.
 */
export function openTally(instance: Instance): FormTally {
	const { anchors, blueprint, count, items, like } = instance;
	const requirements = instance.requirements.filter(({ path }) => !path.startsWith('/sections'));
	const measures = count > 1 || like ? instance.measures : [];
	const target = blueprint.difficulty && Math.round(blueprint.difficulty.target * 10);
	const width = requirements.length + measures.length + 1;
	const vectorOf = (traits: ItemTraits): Int32Array =>
		Int32Array.from([
			...requirements.map(({ worth }) => worth(traits, -1)),
			...measures.map(({ worth }) => worth(traits)),
			target === undefined ? 0 : 10 * traits.difficulty - target,
		]);
	const vectors: (Int32Array | undefined)[] = [];
	const vectorAt = (item: number): Int32Array => {
		const known = vectors[item];
		if (known) return known;
		const traits = items[item]?.traits;
		const made = traits ? vectorOf(traits) : new Int32Array(width);
		vectors[item] = made;
		return made;
	};
	const sumOf = (all: readonly ItemTraits[]): Int32Array =>
		all.reduce((sum, traits) => {
			const vector = vectorOf(traits);
			return sum.map((value, at) => value + (vector[at] ?? 0));
		}, new Int32Array(width));
	const fixed = sumOf(anchors.map(({ traits }) => traits));
	const sums = Array.from({ length: count }, () => fixed.slice());
	const compared = like ? [...sums, sumOf(like)] : sums;
	const missing = openLimits(requirements, sums);
	const apart = openDistances(
		measures.map(({ weight, band }) => ({ weight, band: band ?? Number.POSITIVE_INFINITY })),
		requirements.length,
		compared,
	);
	return {
		clear: () => {
			for (const sum of sums) sum.set(fixed);
		},
		enter: (form, item, sign) => {
			const mine = sums[form];
			if (!mine) return;
			const vector = vectorAt(item);
			for (let at = 0; at < width; at += 1) mine[at] = (mine[at] ?? 0) + sign * (vector[at] ?? 0);
		},
		missed: () => missing() + apart.beyond(),
		unevenness: () => {
			let total = apart.weighted();
			for (const mine of sums) total += Math.floor(Math.abs(mine[width - 1] ?? 0) / 10);
			return Math.round(total);
		},
	};
}

function openLimits(requirements: readonly Requirement[], sums: readonly Int32Array[]): () => number {
	const lowest = requirements.map(({ min }) => min ?? Number.NEGATIVE_INFINITY);
	const highest = requirements.map(({ max }) => max ?? Number.POSITIVE_INFINITY);
	const prices = requirements.map(({ unit }) => unitPrice(unit));
	return () => {
		let total = 0;
		for (const mine of sums) {
			for (let at = 0; at < prices.length; at += 1) {
				const value = mine[at] ?? 0;
				const short = (lowest[at] ?? 0) - value;
				const over = value - (highest[at] ?? 0);
				if (short > 0) total += short * (prices[at] ?? 0);
				else if (over > 0) total += over * (prices[at] ?? 0);
			}
		}
		return total;
	};
}

interface Distances {
	/** Differences between the forms, each at its weight. */
	readonly weighted: () => number;
	/** What exceeds the bands. */
	readonly beyond: () => number;
}

function openDistances(
	measures: readonly { readonly weight: number; readonly band: number }[],
	from: number,
	compared: readonly Int32Array[],
): Distances {
	const distance = (at: number): number => {
		let low = Number.POSITIVE_INFINITY;
		let high = Number.NEGATIVE_INFINITY;
		for (const one of compared) {
			const value = one[from + at] ?? 0;
			if (value < low) low = value;
			if (value > high) high = value;
		}
		return high - low;
	};
	const banded = measures.flatMap(({ band }, at) => (band === Number.POSITIVE_INFINITY ? [] : [at]));
	return {
		weighted: () => {
			let total = 0;
			for (let at = 0; at < measures.length; at += 1) total += (measures[at]?.weight ?? 0) * distance(at);
			return total;
		},
		beyond: () => {
			let total = 0;
			for (const at of banded) {
				const { band = 0, weight = 0 } = measures[at] ?? {};
				total += Math.max(0, distance(at) - band) * weight;
			}
			return total;
		},
	};
}

/** About how much of an item one unit is: a tenth of a step of the mean over a form, or a fifth of five words. */
function unitPrice(unit: Requirement['unit']): number {
	return unit === 'mean' ? 0.1 : unit === 'words' ? 0.2 : 1;
}
