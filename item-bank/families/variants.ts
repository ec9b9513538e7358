import { allAsked, numbersIn } from '../forms/asked.ts';
import { partsOf } from '../items/parts.ts';
import type { Item } from '../types.ts';
import type { Family } from './family.ts';
import { sizeBandOf } from './features.ts';
import { families, findFamily } from './index.ts';
import { checkParameters, faceOf, makeItem } from './make-items.ts';
import type { Parameters } from './parameters.ts';
import { findShapeDifference, type ItemShapeKey, shapeKeyOf, shapeParts } from './shape-key.ts';

/** Variants of an item, and why there are fewer than asked for. */
export interface VariantFinding {
	/** Family that made them; undefined where none makes items of this shape. */
	readonly family?: string;
	readonly items: readonly Item[];
	/** Why there are none, or fewer than asked for. */
	readonly reason?: string;
}

/** Seeds tried for every variant asked for, and at least. */
const seedsEach = 400;
const seedsLeast = 2_000;
/** Seeds tried in one family to see whether it makes items of a shape. */
const probes = 250;

/**
 * Other items of the same shape: kind, what is given and answered in, DOK, points, role, signs, crossing of zero, size
 * band and patterns. An item of a family gets them from its family with its own parameters; one written by hand from the
 * family whose items fit. Distinct from the item and from each other; the same for the same seed.
 */
export function variantsLike(item: Item, count: number, seed: string | number): VariantFinding {
	const shape = shapeKeyOf(item);
	const { origin } = item;
	if (origin !== undefined) {
		const family = findFamily(origin.family, origin.version);
		if (family && checkParameters(family, origin.parameters).length === 0) {
			return collect(family, origin.parameters, item, shape, count, seed);
		}
	}
	const fit = findFit(item, shape);
	if ('reason' in fit) return { items: [], reason: fit.reason };
	return collect(fit.family, fit.parameters, item, shape, count, seed);
}

function collect(
	family: Family,
	parameters: Parameters,
	item: Item,
	shape: ItemShapeKey,
	count: number,
	seed: string | number,
): VariantFinding {
	const faces = new Set([faceOf(item)]);
	const items: Item[] = [];
	const most = Math.max(seedsLeast, seedsEach * count);
	let tried = 0;
	for (const [index, asked] of [parameters, ...wider(family, parameters, item)].entries()) {
		const prefix = index === 0 ? `${seed}` : `${seed}/wider`;
		for (let turn = 1; turn <= most && items.length < count; turn += 1) {
			tried += 1;
			const variant = makeItem(family, `${prefix}/${turn}`, asked);
			if (variant === undefined || faces.has(faceOf(variant))) continue;
			if (findShapeDifference(variant, shape) !== undefined) continue;
			faces.add(faceOf(variant));
			items.push(variant);
		}
	}
	if (items.length === count) return { family: family.id, items };
	const reason = `expected ${count} variants of the same shape from "${family.id}", found ${items.length} among ${tried} seeds`;
	return { family: family.id, items, reason };
}

/** Where an item's own parameters leave too few, numbers as large as its size band goes: variants keep the band, not the limit. */
function wider(family: Family, parameters: Parameters, item: Item): readonly Parameters[] {
	const { largest } = family.parameters;
	const own = parameters.largest ?? largest?.usual;
	if (largest?.kind !== 'integer' || typeof own !== 'number') return [];
	const band = sizeBandOf(partsOf(item).flatMap((part) => allAsked(part).flatMap(numbersIn)));
	const wide = Math.min(largest.most, Math.max(own, Number.isFinite(band) ? band : own));
	const asked = { ...parameters, largest: wide };
	return wide === own || checkParameters(family, asked).length > 0 ? [] : [asked];
}

type Fit = { readonly family: Family; readonly parameters: Parameters } | { readonly reason: string };

/** The family that makes items of a shape, found by trying; or how far the nearest one agrees. */
function findFit(item: Item, shape: ItemShapeKey): Fit {
	let nearest: { readonly family: Family; readonly agreed: number } | undefined;
	for (const family of families) {
		if (!family.given.includes(item.given) || !family.kinds.includes(item.kind)) continue;
		const parameters = guessParameters(family, item);
		if (checkParameters(family, parameters).length > 0) continue;
		for (let probe = 1; probe <= probes; probe += 1) {
			const made = makeItem(family, `fit/${probe}`, parameters);
			if (made === undefined) continue;
			const difference = findShapeDifference(made, shape);
			if (difference === undefined) return { family, parameters };
			const agreed = shapeParts.indexOf(difference);
			if (nearest === undefined || agreed > nearest.agreed) nearest = { family, agreed };
		}
	}
	if (nearest === undefined) {
		return { reason: `no family makes ${item.kind} items that give ${item.given}` };
	}
	const part = shapeParts[nearest.agreed];
	const wanted = part === undefined ? '' : shape[part];
	return {
		reason: `no family makes items of this shape; the nearest, "${nearest.family.id}", differs in ${part} (${wanted})`,
	};
}

/** Parameters under which a family makes numbers as large as those of the item. */
function guessParameters({ parameters }: Family, item: Item): Parameters {
	const numbers = partsOf(item).flatMap((part) => allAsked(part).flatMap(numbersIn));
	const band = sizeBandOf(numbers);
	const guess: Record<string, number> = {};
	const { largest, terms } = parameters;
	if (largest?.kind === 'integer' && Number.isFinite(band)) {
		guess.largest = Math.min(largest.most, Math.max(largest.least, band));
	}
	if (terms?.kind === 'integer') guess.terms = Math.min(terms.most, Math.max(terms.least, numbers.length));
	return guess;
}
