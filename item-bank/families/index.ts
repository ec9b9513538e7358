import { counterGroups } from './counters/counter-groups.ts';
import { countersExpression } from './counters/counters-expression.ts';
import { countersMatch } from './counters/counters-match.ts';
import { countersValue } from './counters/counters-value.ts';
import { expressionCounters } from './counters/expression-counters.ts';
import { zeroPairs } from './counters/zero-pairs.ts';
import type { Family } from './family.ts';
import { arrowValue } from './number-line/arrow-value.ts';
import { arrowsExpression } from './number-line/arrows-expression.ts';
import { distanceOnLine } from './number-line/distance-on-line.ts';
import { expressionArrows } from './number-line/expression-arrows.ts';
import { missingMove } from './number-line/missing-move.ts';
import { pointMarking } from './number-line/point-marking.ts';
import { pointReading } from './number-line/point-reading.ts';
import { absoluteValue } from './symbols/absolute-value.ts';
import { comparison } from './symbols/comparison.ts';
import { differenceOfTwo } from './symbols/difference-of-two.ts';
import { equalExpressions } from './symbols/equal-expressions.ts';
import { minusNegative } from './symbols/minus-negative.ts';
import { missingNumber } from './symbols/missing-number.ts';
import { mixedOperations } from './symbols/mixed-operations.ts';
import { numberOrder } from './symbols/number-order.ts';
import { productOfTwo } from './symbols/product-of-two.ts';
import { quotientOfTwo } from './symbols/quotient-of-two.ts';
import { sumOfSeveral } from './symbols/sum-of-several.ts';
import { sumOfTwo } from './symbols/sum-of-two.ts';
import { trueComparison } from './symbols/true-comparison.ts';
import { trueEquation } from './symbols/true-equation.ts';

/** Every family at its newest version, one file each. */
export const families: readonly Family[] = [
	sumOfTwo,
	differenceOfTwo,
	minusNegative,
	productOfTwo,
	quotientOfTwo,
	sumOfSeveral,
	absoluteValue,
	comparison,
	equalExpressions,
	missingNumber,
	mixedOperations,
	numberOrder,
	trueComparison,
	trueEquation,
	counterGroups,
	countersExpression,
	countersMatch,
	countersValue,
	expressionCounters,
	zeroPairs,
	arrowValue,
	arrowsExpression,
	distanceOnLine,
	expressionArrows,
	missingMove,
	pointMarking,
	pointReading,
];

/** The family with an id, at its newest version or the one asked for; undefined when it never was or is gone. */
export function findFamily(id: string, version?: number): Family | undefined {
	return families.find((family) => family.id === id && (version === undefined || family.version === version));
}
