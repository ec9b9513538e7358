import { absoluteValueAsOpposite } from './absolute-value-as-opposite.ts';
import { allCountersCounted } from './all-counters-counted.ts';
import { anyNegativeMakesNegative } from './any-negative-makes-negative.ts';
import { bothNumbersFlipped } from './both-numbers-flipped.ts';
import { detachedMinus } from './detached-minus.ts';
import { directionByOperation } from './direction-by-operation.ts';
import { distanceAddsSizes } from './distance-adds-sizes.ts';
import { largerMinusSmaller } from './larger-minus-smaller.ts';
import { leadingMinusParked } from './leading-minus-parked.ts';
import { majorityColourOnly } from './majority-colour-only.ts';
import { operationChangedSignKept } from './operation-changed-sign-kept.ts';
import { orderBySize } from './order-by-size.ts';
import type { ErrorPattern, PatternId } from './pattern.ts';
import { productReadAsDifference } from './product-read-as-difference.ts';
import { productRuleInSum } from './product-rule-in-sum.ts';
import { rightToLeft } from './right-to-left.ts';
import { secondMinusLost } from './second-minus-lost.ts';
import { signLeftOff } from './sign-left-off.ts';
import { signsDropped } from './signs-dropped.ts';
import { sizesAddedMinusPut } from './sizes-added-minus-put.ts';
import { sizesSubtractedFirstSignKept } from './sizes-subtracted-first-sign-kept.ts';
import { startTickCounted } from './start-tick-counted.ts';
import { subtractionReversed } from './subtraction-reversed.ts';
import { sumRuleInProduct } from './sum-rule-in-product.ts';
import { twoMinusesMakePlus } from './two-minuses-make-plus.ts';
import { wallAtZero } from './wall-at-zero.ts';
import { zeroSkipped } from './zero-skipped.ts';

/** All error patterns in a fixed order, one file each. A sample: research programmes list far more rules (Bofferding 2010). */
export const patterns: readonly ErrorPattern[] = [
	signsDropped,
	secondMinusLost,
	leadingMinusParked,
	twoMinusesMakePlus,
	sizesAddedMinusPut,
	sizesSubtractedFirstSignKept,
	largerMinusSmaller,
	subtractionReversed,
	wallAtZero,
	operationChangedSignKept,
	bothNumbersFlipped,
	productRuleInSum,
	directionByOperation,
	sumRuleInProduct,
	anyNegativeMakesNegative,
	productReadAsDifference,
	startTickCounted,
	zeroSkipped,
	signLeftOff,
	detachedMinus,
	rightToLeft,
	orderBySize,
	distanceAddsSizes,
	allCountersCounted,
	majorityColourOnly,
	absoluteValueAsOpposite,
];

/** The fifteen patterns of sums and differences of two numbers. */
export const sumPatternIds: readonly PatternId[] = [
	'signs-dropped',
	'second-minus-lost',
	'leading-minus-parked',
	'two-minuses-make-plus',
	'sizes-added-minus-put',
	'sizes-subtracted-first-sign-kept',
	'larger-minus-smaller',
	'subtraction-reversed',
	'wall-at-zero',
	'operation-changed-sign-kept',
	'both-numbers-flipped',
	'product-rule-in-sum',
	'direction-by-operation',
	'start-tick-counted',
	'zero-skipped',
];

const patternsById: ReadonlyMap<string, ErrorPattern> = new Map(patterns.map((pattern) => [pattern.id, pattern]));

/** The pattern with an id, if there is one. */
export function findPattern(id: string): ErrorPattern | undefined {
	return patternsById.get(id);
}

/** Thrown where a pattern is named that does not exist. */
export class UnknownPatternError extends Error {
	readonly code = 'pattern-unknown';
	readonly id: string;

	constructor(id: string) {
		super(
			`expected the id of an error pattern, found "${id}"; there are ${patterns.map((pattern) => pattern.id).join(', ')}`,
		);
		this.id = id;
	}
}

/**
 * The pattern with an id.
 * @throws {UnknownPatternError} when there is none.
 */
export function getPattern(id: string): ErrorPattern {
	const pattern = findPattern(id);
	if (pattern === undefined) throw new UnknownPatternError(id);
	return pattern;
}
