import { type Finding, found, refuse } from './finding.ts';
import { type Interval, usualConfidence } from './intervals.ts';
import { covarianceOf, momentsOf } from './moments.ts';
import { fQuantile } from './numbers/beta.ts';
import type { ScoreTable } from './score-table.ts';
import { isRightOrWrong } from './select-students.ts';
import { findTotals } from './totals.ts';

/** How consistently the items of a form measure one thing. */
export interface Reliability {
	/** Cronbach's alpha, at most 1; negative values are possible and are not raised to 0. */
	readonly alpha: number;
	/** Whether all items are right or wrong, where alpha is the same as KR-20. */
	readonly isKr20: boolean;
	/** Feldt's interval. */
	readonly interval: Interval;
	/** Standard error of measurement in points: SD √(1 − alpha), the SD divided by n − 1. */
	readonly standardError: number;
	/** Alpha of the other items, in form order; refused where fewer than two others are left or they do not differ. */
	readonly withoutItem: readonly Finding<number>[];
	readonly items: number;
	readonly students: number;
}

/**
 * Cronbach's alpha = k/(k − 1) × (1 − Σ var(item)/var(total)), the same as KR-20 for right or wrong items when both
 * variances divide by the same number (Kuder & Richardson 1937, Cronbach 1951; mixing n and n − 1 gives a higher, wrong
 * figure). Interval: Feldt 1965, 1 − (1 − alpha) F, with n − 1 and (n − 1)(k − 1) degrees of freedom. An item without
 * variance still counts as one of the k. Refused like findTotals.
 */
export function measureReliability(table: ScoreTable, confidence: number = usualConfidence): Finding<Reliability> {
	const finding = findTotals(table);
	if (finding.kind === 'refused') return finding;
	const { totals, moments } = finding.value;
	const items = table.columns.length;
	const students = table.students.length;
	const own = table.columns.map(({ points }) => momentsOf(points));
	const sum = own.reduce((all, { variance }) => all + variance, 0);
	const alpha = alphaOf(items, sum, moments.variance);
	const degrees = [students - 1, (students - 1) * (items - 1)] as const;
	const withoutItem = table.columns.map(({ points, item }, at) => {
		const { mean, variance } = own[at] ?? { mean: 0, variance: 0 };
		const shared = covarianceOf(points, mean, totals, moments.mean);
		const rest = moments.variance + variance - 2 * shared;
		if (items < 3) return refuse('too-few-items', `expected two or more items beside "${item.id}", found ${items - 1}`);
		if (rest <= 1e-12 * moments.variance) {
			return refuse('no-variance', `the other items beside "${item.id}" give everybody the same`);
		}
		return found(alphaOf(items - 1, sum - variance, rest));
	});
	return found({
		alpha,
		isKr20: table.columns.every(isRightOrWrong),
		interval: {
			low: 1 - (1 - alpha) * fQuantile((1 + confidence) / 2, ...degrees),
			high: 1 - (1 - alpha) * fQuantile((1 - confidence) / 2, ...degrees),
		},
		// Alpha is at most 1; rounding may put it a little above.
		standardError: Math.sqrt(moments.sampleVariance * Math.max(0, 1 - alpha)),
		withoutItem,
		items,
		students,
	});
}

/** Alpha from the number of items, the sum of their variances and the variance of totals, all divided by the same number. */
export function alphaOf(items: number, sumOfVariances: number, variance: number): number {
	return (items / (items - 1)) * (1 - sumOfVariances / variance);
}

/** How many times as long a test has to be for another reliability (Spearman 1910, Brown 1910); both between 0 and 1. */
export function lengthFor(from: number, to: number): number {
	return (to * (1 - from)) / (from * (1 - to));
}
