import { type Finding, found, refuse } from './finding.ts';
import { logBeta, logChoose } from './numbers/beta.ts';
import { measureReliability } from './reliability.ts';
import type { ScoreTable } from './score-table.ts';
import { isRightOrWrong } from './select-students.ts';
import { findTotals } from './totals.ts';

/** How often the same students would fall on the same side of a cut on another form alike. */
export interface DecisionConsistency {
	/** Points from which a score passes. */
	readonly cut: number;
	/** Share of students at or above the cut. */
	readonly passing: number;
	/** Share expected to be on the same side twice, 0 to 1. */
	readonly agreement: number;
	/** Agreement by chance alone. */
	readonly chance: number;
	/** (agreement − chance)/(1 − chance). */
	readonly kappa: number;
	readonly method: ConsistencyMethod;
}

/**
 * - huynh: beta-binomial from mean and KR-21 (Huynh 1976), for items of one point.
 * - subkoviak: binomial for each student around a regressed score, with KR-20 (Subkoviak 1976), for items of one point.
 * - effective-length: beta-binomial with alpha and Livingston & Lewis 1995's effective length, for any points; the length is
 *   rounded and the cut on it rounded down.
 */
export type ConsistencyMethod = 'huynh' | 'subkoviak' | 'effective-length';

/**
 * Consistency of passing decisions at a cut, from one sitting. Formulas from memory, values held against the reference set.
 * Refused like findTotals; for a cut that everybody or nobody could reach (0 or less, above the maximum); where items
 * have several points and the method takes one; and where the reliability the method needs is not between 0 and 1.
 */
export function measureConsistency(
	table: ScoreTable,
	cut: number,
	method: ConsistencyMethod = 'huynh',
): Finding<DecisionConsistency> {
	const finding = findTotals(table);
	if (finding.kind === 'refused') return finding;
	const { totals, moments } = finding.value;
	const maximum = table.columns.reduce((sum, { item }) => sum + item.maximum, 0);
	if (!(cut > 0 && cut <= maximum)) {
		return refuse('not-applicable', `expected a cut above 0 and up to ${maximum} points, found ${cut}`);
	}
	const isOnePoint = table.columns.every((column) => column.item.maximum === 1 && isRightOrWrong(column));
	if (!isOnePoint && method !== 'effective-length') {
		return refuse('not-right-or-wrong', `expected items of one point for the method ${method}`);
	}
	const { mean, variance } = moments;
	const alpha = measureReliability(table);
	const reliability =
		method === 'huynh'
			? (maximum / (maximum - 1)) * (1 - (mean * (maximum - mean)) / (maximum * variance))
			: alpha.kind === 'found'
				? alpha.value.alpha
				: 0;
	if (!(reliability > 0 && reliability < 1)) {
		return refuse('no-solution', `expected a reliability between 0 and 1, found ${reliability.toFixed(2)}`);
	}
	const whole = Math.ceil(cut);
	const { agreement, pass } =
		method === 'subkoviak'
			? agreeByStudent(totals, { length: maximum, mean, reliability }, whole)
			: method === 'huynh'
				? agreeByBeta(maximum, betaFrom(mean / maximum, maximum / reliability - maximum), whole)
				: agreeByLength({ maximum, mean, variance, reliability }, cut);
	const chance = pass * pass + (1 - pass) ** 2;
	return found({
		cut,
		passing: totals.filter((total) => total >= cut).length / totals.length,
		agreement,
		chance,
		kappa: chance === 1 ? 0 : (agreement - chance) / (1 - chance),
		method,
	});
}

interface Agreement {
	readonly agreement: number;
	/** Expected share passing. */
	readonly pass: number;
}

/** Parameters of a beta distribution with a mean and a sum of its parameters. */
interface Beta {
	readonly a: number;
	readonly b: number;
}

function betaFrom(mean: number, sum: number): Beta {
	return { a: mean * sum, b: (1 - mean) * sum };
}

function agreeByBeta(length: number, { a, b }: Beta, cut: number): Agreement {
	const front = logBeta(a, b);
	const choose = Array.from({ length: length + 1 }, (_, score) => logChoose(length, score));
	// Two scores matter by their sum alone, apart from the coefficients.
	const tail = Array.from({ length: 2 * length + 1 }, (_, sum) => logBeta(a + sum, 2 * length + b - sum) - front);
	let [agreement, pass] = [0, 0];
	for (let first = 0; first <= length; first += 1) {
		for (let second = 0; second <= length; second += 1) {
			const share = Math.exp((choose[first] as number) + (choose[second] as number) + (tail[first + second] as number));
			if (first >= cut === second >= cut) agreement += share;
			if (first >= cut) pass += share;
		}
	}
	return { agreement, pass };
}

function agreeByStudent(
	totals: Float64Array,
	{ length, mean, reliability }: { readonly length: number; readonly mean: number; readonly reliability: number },
	cut: number,
): Agreement {
	const passes = new Map<number, number>();
	let [agreement, pass] = [0, 0];
	for (const total of totals) {
		const known = passes.get(total);
		const chance = known ?? passChance((reliability * total + (1 - reliability) * mean) / length, length, cut);
		passes.set(total, chance);
		agreement += chance * chance + (1 - chance) ** 2;
		pass += chance;
	}
	return { agreement: agreement / totals.length, pass: pass / totals.length };
}

function passChance(share: number, length: number, cut: number): number {
	let sum = 0;
	for (let score = cut; score <= length; score += 1) {
		sum += Math.exp(logChoose(length, score)) * share ** score * (1 - share) ** (length - score);
	}
	return sum;
}

function agreeByLength(
	given: { readonly maximum: number; readonly mean: number; readonly variance: number; readonly reliability: number },
	cut: number,
): Agreement {
	const { maximum, mean, variance, reliability } = given;
	const length = Math.max(
		1,
		Math.round((mean * (maximum - mean) - reliability * variance) / (variance * (1 - reliability))),
	);
	const share = mean / maximum;
	const spread = (reliability * variance) / maximum ** 2;
	return agreeByBeta(
		length,
		betaFrom(share, (share * (1 - share)) / spread - 1),
		Math.floor((length * cut) / maximum + 1e-9),
	);
}
