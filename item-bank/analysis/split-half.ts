import { type Finding, found, refuse } from './finding.ts';
import { covarianceOf, momentsOf } from './moments.ts';
import type { ScoreTable } from './score-table.ts';
import { selectItems, totalsOf } from './select-students.ts';
import { findTotals } from './totals.ts';

/** How two halves of a form agree. */
export interface SplitHalf {
	/** Correlation of the halves. */
	readonly correlation: number;
	/** Spearman-Brown: reliability of the whole from two halves alike, 2r/(1 + r). */
	readonly spearmanBrown: Finding<number>;
	/** Rulon and Guttman: 2 (1 − (var a + var b)/var total), which does not ask for equal variances. */
	readonly rulon: number;
}

/** odd-even: items 1, 3, 5 … against the rest; first-second: the first half of the form, the larger of unequal ones. */
export type Split = 'odd-even' | 'first-second';

/**
 * Agreement of two halves of a form (Spearman 1910 and Brown 1910; Rulon 1939; Guttman 1945, from memory). It depends on
 * the split, so alpha is the figure to report. Not raised to 0 where negative. Refused like findTotals, where a half
 * gives everybody the same, and for Spearman-Brown at a correlation of −1.
 */
export function measureSplitHalf(table: ScoreTable, split: Split = 'odd-even'): Finding<SplitHalf> {
	const finding = findTotals(table);
	if (finding.kind === 'refused') return finding;
	const places = [...table.columns.keys()];
	const isFirst = (place: number): boolean =>
		split === 'odd-even' ? place % 2 === 0 : place < Math.ceil(places.length / 2);
	const [first, second] = [places.filter(isFirst), places.filter((place) => !isFirst(place))].map((half) => {
		const totals = totalsOf(selectItems(table, half));
		return { totals, ...momentsOf(totals) };
	});
	if (first === undefined || second === undefined || first.variance === 0 || second.variance === 0) {
		return refuse('no-variance', 'expected both halves to tell students apart, found one where all have the same');
	}
	const shared = covarianceOf(first.totals, first.mean, second.totals, second.mean);
	const correlation = shared / Math.sqrt(first.variance * second.variance);
	return found({
		correlation,
		spearmanBrown:
			correlation <= -1 + 1e-12
				? refuse('no-solution', 'two halves that go exactly against each other have no such reliability')
				: found((2 * correlation) / (1 + correlation)),
		rulon: 2 * (1 - (first.variance + second.variance) / finding.value.moments.variance),
	});
}
