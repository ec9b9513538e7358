import type { ItemTraits } from '../../item-bank/forms/item-traits.ts';
import type { Instance } from './instance.ts';

/** The sums that requirements and measures look at, kept up to date while items come and go. */
export interface FormTally {
	readonly add: (form: number, item: number) => void;
	readonly remove: (form: number, item: number) => void;
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
	const { anchors, blueprint, items, like } = instance;
	const requirements = instance.requirements.filter(({ path }) => !path.startsWith('/sections'));
	const measures = instance.count > 1 || like ? instance.measures : [];
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
	const sums = Array.from({ length: instance.count }, () => new Int32Array(width));
	const enter = (form: number, vector: Int32Array, sign: number): void => {
		const mine = sums[form];
		if (mine) for (let at = 0; at < width; at += 1) mine[at] = (mine[at] ?? 0) + sign * (vector[at] ?? 0);
	};
	for (const { traits } of anchors) sums.forEach((_, form) => enter(form, vectorOf(traits), 1));
	const given = like?.reduce((total, traits) => {
		const vector = vectorOf(traits);
		return total.map((value, at) => value + (vector[at] ?? 0));
	}, new Int32Array(width));
	const compared = given ? [...sums, given] : sums;
	const distance = (at: number): number => {
		let low = Number.POSITIVE_INFINITY;
		let high = Number.NEGATIVE_INFINITY;
		for (const one of compared) {
			const value = one[at] ?? 0;
			if (value < low) low = value;
			if (value > high) high = value;
		}
		return high - low;
	};
	const limits = requirements.map(({ min = -Infinity, max = Infinity, unit }) => ({
		min,
		max,
		price: unitPrice(unit),
	}));
	const weights = measures.map(({ weight }) => weight);
	const bands = measures.map(({ band }) => band ?? Number.POSITIVE_INFINITY);
	return {
		add: (form, item) => enter(form, vectorAt(item), 1),
		remove: (form, item) => enter(form, vectorAt(item), -1),
		missed: () => {
			let total = 0;
			for (let at = 0; at < limits.length; at += 1) {
				const { min, max, price } = limits[at] ?? { min: 0, max: 0, price: 0 };
				for (const mine of sums) {
					const value = mine[at] ?? 0;
					if (value < min) total += (min - value) * price;
					else if (value > max) total += (value - max) * price;
				}
			}
			for (let at = 0; at < bands.length; at += 1) {
				const band = bands[at] ?? Number.POSITIVE_INFINITY;
				if (band !== Number.POSITIVE_INFINITY)
					total += Math.max(0, distance(limits.length + at) - band) * (weights[at] ?? 0);
			}
			return total;
		},
		unevenness: () => {
			let total = 0;
			for (let at = 0; at < weights.length; at += 1) total += (weights[at] ?? 0) * distance(limits.length + at);
			for (const mine of sums) total += Math.floor(Math.abs(mine[width - 1] ?? 0) / 10);
			return Math.round(total);
		},
	};
}

/** About how much of an item one unit is: a tenth of a step of the mean over a form, or a fifth of five words. */
function unitPrice(unit: 'items' | 'points' | 'words' | 'mean'): number {
	return unit === 'mean' ? 0.1 : unit === 'words' ? 0.2 : 1;
}
