import { counterGroups } from './counters/counter-groups.ts';
import { countersExpression } from './counters/counters-expression.ts';
import { countersMatch } from './counters/counters-match.ts';
import { countersStatements } from './counters/counters-statements.ts';
import { countersValue } from './counters/counters-value.ts';
import { expressionCounters } from './counters/expression-counters.ts';
import { zeroPairs } from './counters/zero-pairs.ts';
import { zeroPairsNeeded } from './counters/zero-pairs-needed.ts';
import type { Family } from './family.ts';
import { arrowValue } from './number-line/arrow-value.ts';
import { arrowsExpression } from './number-line/arrows-expression.ts';
import { distanceOnLine } from './number-line/distance-on-line.ts';
import { expressionArrows } from './number-line/expression-arrows.ts';
import { lineMatch } from './number-line/line-match.ts';
import { missingMove } from './number-line/missing-move.ts';
import { pointMarking } from './number-line/point-marking.ts';
import { pointReading } from './number-line/point-reading.ts';
import { explainCounters } from './reasoning/explain-counters.ts';
import { explainMistake } from './reasoning/explain-mistake.ts';
import { explainOrder } from './reasoning/explain-order.ts';
import { explainSituation } from './reasoning/explain-situation.ts';
import { firstWrongLine } from './reasoning/first-wrong-line.ts';
import { storyChange } from './stories/story-change.ts';
import { storyChanges } from './stories/story-changes.ts';
import { storyComparison } from './stories/story-comparison.ts';
import { storyExpression } from './stories/story-expression.ts';
import { storyPosition } from './stories/story-position.ts';
import { storyRate } from './stories/story-rate.ts';
import { storyTotal } from './stories/story-total.ts';
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
import { valueInGap } from './symbols/value-in-gap.ts';
import { tableChange } from './tables/table-change.ts';
import { tableMissingChange } from './tables/table-missing-change.ts';
import { tableOrder } from './tables/table-order.ts';
import { tableSet } from './tables/table-set.ts';
import { tableTotal } from './tables/table-total.ts';

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
	valueInGap,
	counterGroups,
	countersExpression,
	countersMatch,
	countersStatements,
	countersValue,
	expressionCounters,
	zeroPairsNeeded,
	zeroPairs,
	arrowValue,
	arrowsExpression,
	distanceOnLine,
	expressionArrows,
	lineMatch,
	missingMove,
	pointMarking,
	pointReading,
	storyChange,
	storyChanges,
	storyComparison,
	storyExpression,
	storyPosition,
	storyRate,
	storyTotal,
	tableChange,
	tableMissingChange,
	tableOrder,
	tableSet,
	tableTotal,
	explainCounters,
	explainMistake,
	explainOrder,
	explainSituation,
	firstWrongLine,
];

/** The family with an id, at its newest version or the one asked for; undefined when it never was or is gone. */
export function findFamily(id: string, version?: number): Family | undefined {
	return families.find((family) => family.id === id && (version === undefined || family.version === version));
}
