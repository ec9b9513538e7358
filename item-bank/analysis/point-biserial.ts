import { type Finding, found, type Refusal, refuse } from './finding.ts';
import { covarianceOf, momentsOf } from './moments.ts';
import type { ItemColumn, ScoreTable } from './score-table.ts';
import { findTotals, type Totals } from './totals.ts';

/** How an item goes together with the rest of the test, −1 to 1. */
export interface ItemTotalCorrelation {
	/** Correlation with the total of the other items: the figure to read. */
	readonly corrected: Finding<number>;
	/** Correlation with the total, the item itself in it: larger, much so on short tests. */
	readonly uncorrected: Finding<number>;
}

/**
 * Point-biserial correlation of every item, in form order: Pearson's r of the item's points x with the rest T − x, and with
 * the total T. From sums: cov(x, T − x) = cov(x, T) − var(x). For items with more points it is the ordinary item-rest
 * correlation. Refused for a table without totals (see findTotals), fewer than three students, an item everybody earned
 * the same on, and a rest that is the same for everybody: never 0 in their place.
 */
export function measureCorrelations(table: ScoreTable): readonly ItemTotalCorrelation[] {
	const totals = findTotals(table);
	const few = table.students.length < 3;
	const refusal: Refusal | undefined = few
		? refuse('too-few-students', `expected three or more students, found ${table.students.length}`)
		: totals.kind === 'refused'
			? totals
			: undefined;
	return table.columns.map((column) =>
		refusal !== undefined || totals.kind === 'refused'
			? { corrected: refusal ?? (totals as Refusal), uncorrected: refusal ?? (totals as Refusal) }
			: correlate(column, totals.value),
	);
}

function correlate({ item, points }: ItemColumn, { totals, moments }: Totals): ItemTotalCorrelation {
	const own = momentsOf(points);
	if (own.variance === 0) {
		const refusal = refuse('no-variance', `expected different points on item "${item.id}", found ${own.mean} for all`);
		return { corrected: refusal, uncorrected: refusal };
	}
	const shared = covarianceOf(points, own.mean, totals, moments.mean);
	const uncorrected = found(shared / Math.sqrt(own.variance * moments.variance));
	const restVariance = moments.variance + own.variance - 2 * shared;
	// What is left of equal rests is rounding, far below the smallest variance a point can make among real students.
	if (restVariance <= 1e-12 * moments.variance) {
		return {
			corrected: refuse('no-variance', `the other items beside "${item.id}" give everybody the same`),
			uncorrected,
		};
	}
	return { corrected: found((shared - own.variance) / Math.sqrt(own.variance * restVariance)), uncorrected };
}
