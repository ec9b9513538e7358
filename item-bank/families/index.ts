import type { Family } from './family.ts';
import { differenceOfTwo } from './symbols/difference-of-two.ts';
import { minusNegative } from './symbols/minus-negative.ts';
import { productOfTwo } from './symbols/product-of-two.ts';
import { quotientOfTwo } from './symbols/quotient-of-two.ts';
import { sumOfSeveral } from './symbols/sum-of-several.ts';
import { sumOfTwo } from './symbols/sum-of-two.ts';

/** Every family at its newest version, one file each. */
export const families: readonly Family[] = [
	sumOfTwo,
	differenceOfTwo,
	minusNegative,
	productOfTwo,
	quotientOfTwo,
	sumOfSeveral,
];

/** The family with an id, at its newest version or the one asked for; undefined when it never was or is gone. */
export function findFamily(id: string, version?: number): Family | undefined {
	return families.find((family) => family.id === id && (version === undefined || family.version === version));
}
