import { readingLoadOf } from '../difficulty/reading.ts';
import { countNumbers } from '../expression/count.ts';
import { askedMathematics, numbersIn } from '../forms/asked.ts';
import { crossesZero, subtractsNegative } from '../forms/shape.ts';
import type { Item } from '../types.ts';

/** What makes one item harder than another before anybody has answered it. */
export interface Features {
	/** Numbers in the expression asked for. */
	readonly terms: number;
	/** Up to 10, 20, 100 or above, by the largest size asked about. */
	readonly sizeBand: number;
	readonly crossesZero: boolean;
	/** Signs of the numbers asked about, in reading order, such as -+. */
	readonly signs: string;
	readonly subtractsNegative: boolean;
	/** Words, rounded up to fives. */
	readonly reading: number;
}

/** Names of the features. */
export type FeatureName = keyof Features;

/** The features of an item: of its first asked mathematics, and its reading load. */
export function featuresOf(item: Item): Features {
	const asked = askedMathematics(item);
	const numbers = asked ? numbersIn(asked) : [];
	return {
		terms: asked ? countNumbers(asked) : 0,
		sizeBand: sizeBandOf(numbers),
		crossesZero: asked !== undefined && crossesZero(asked),
		signs: signsOf(numbers),
		subtractsNegative: asked !== undefined && subtractsNegative(asked),
		reading: readingLoadOf(item),
	};
}

/** The band of the largest size: 10, 20, 100, or Infinity above. */
export function sizeBandOf(numbers: readonly number[]): number {
	const largest = Math.max(0, ...numbers.map(Math.abs));
	return [10, 20, 100].find((band) => largest <= band) ?? Number.POSITIVE_INFINITY;
}

/** Signs in order: - for negative, + for positive, 0 for zero. */
export function signsOf(numbers: readonly number[]): string {
	return numbers.map((number) => (number < 0 ? '-' : number > 0 ? '+' : '0')).join('');
}
