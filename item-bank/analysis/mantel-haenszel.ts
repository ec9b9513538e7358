import { type Finding, found, refuse } from './finding.ts';
import { chiSquareAbove } from './numbers/normal.ts';
import { type ItemColumn, type ScoreTable, stateCodes } from './score-table.ts';
import { totalsOf } from './select-students.ts';

/** Whether an item behaves differently for two groups of students with the same total. */
export interface GroupDifference {
	/** Common odds ratio over the totals; above 1 the item favours the reference group. */
	readonly oddsRatio: number;
	/** −2.35 ln(odds ratio); below 0 the item favours the reference group. */
	readonly delta: number;
	/** Of delta. */
	readonly standardError: number;
	/** With the continuity correction of ½, one degree of freedom. */
	readonly chiSquare: number;
	/** Without the correction: the one the size goes by. */
	readonly uncorrected: number;
	/** Probability of the uncorrected value when there is no difference. */
	readonly probability: number;
	/** Difference in the share right, focal less reference, weighted by the focal group: −1 to 1. */
	readonly shareDifference: number;
	readonly size: 'small' | 'moderate' | 'large';
	/** Totals at which both groups have students or the table has more than one. */
	readonly strata: number;
}

/** Group sizes below which no difference is computed. */
export interface LeastGroups {
	readonly smaller: number;
	readonly all: number;
}

/** 200 in the smaller group and 500 in all: Zwick 2012 as remembered, for test assembly; common practice says not below 100. */
export const leastGroups: LeastGroups = { smaller: 200, all: 500 };

/** Right and wrong of both groups at one total. */
export interface Stratum {
	readonly referenceRight: number;
	readonly referenceWrong: number;
	readonly focalRight: number;
	readonly focalWrong: number;
}

/**
 * Mantel-Haenszel comparison of every item for a focal and a reference group, students matched on the total score with the
 * studied item in it; omitted and not reached count as wrong (NAEP technical documentation, read). Mantel & Haenszel 1959;
 * standard error Phillips & Holland 1987. Size: small when |delta| < 1 or p > .05; large when |delta| ≥ 1.5 and
 * (|delta| − 1)/SE > 1.645; else moderate (categories A, B, C of NAEP). Students in neither group are left out. A statistical
 * difference is a reason to look at the item, not yet unfairness. Refused for groups below `least`, items with other
 * points than none and all, missing responses, and where the odds ratio has no value.
 */
export function measureGroupDifferences(
	table: ScoreTable,
	groupOf: (student: string) => 'reference' | 'focal' | undefined,
	least: LeastGroups = leastGroups,
): readonly Finding<GroupDifference>[] {
	const groups = Uint8Array.from(table.students, (student) => {
		const group = groupOf(student);
		return group === undefined ? 0 : group === 'reference' ? 1 : 2;
	});
	const sizes = [1, 2].map((group) => groups.filter((value) => value === group).length);
	const [reference = 0, focal = 0] = sizes;
	if (Math.min(reference, focal) < least.smaller || reference + focal < least.all) {
		const refusal = refuse(
			'too-few-students',
			`expected ${least.smaller} students or more in each group and ${least.all} in both, found ${reference} and ${focal}`,
		);
		return table.columns.map(() => refusal);
	}
	const totals = totalsOf(table);
	const strataOf = new Map([...new Set(totals)].map((total, at) => [total, at]));
	const places = Int32Array.from(totals, (total) => strataOf.get(total) ?? 0);
	return table.columns.map((column) => {
		const faulty = findFault(column, groups);
		return faulty ?? summariseStrata(countStrata(column, groups, places, strataOf.size));
	});
}

function findFault({ item, points, states }: ItemColumn, groups: Uint8Array): ReturnType<typeof refuse> | undefined {
	for (let place = 0; place < points.length; place += 1) {
		if (groups[place] === 0) continue;
		if ((states[place] as number) >= stateCodes.unrated) {
			return refuse('incomplete', `expected points for every response, found none for item "${item.id}"`);
		}
		const earned = points[place];
		if (earned !== 0 && earned !== item.maximum) {
			return refuse(
				'not-right-or-wrong',
				`expected 0 or ${item.maximum} points, found ${earned} for item "${item.id}"`,
			);
		}
	}
	return undefined;
}

function countStrata(
	{ points }: ItemColumn,
	groups: Uint8Array,
	places: Int32Array,
	count: number,
): readonly Stratum[] {
	const counts = new Float64Array(4 * count);
	for (let student = 0; student < points.length; student += 1) {
		const group = groups[student] as number;
		if (group === 0) continue;
		const cell = 4 * (places[student] as number) + 2 * (group - 1) + ((points[student] as number) > 0 ? 0 : 1);
		counts[cell] = (counts[cell] as number) + 1;
	}
	return Array.from({ length: count }, (_, at) => {
		const [referenceRight = 0, referenceWrong = 0, focalRight = 0, focalWrong = 0] = counts.slice(4 * at, 4 * at + 4);
		return { referenceRight, referenceWrong, focalRight, focalWrong };
	});
}

/** {@link measureGroupDifferences} from the tables of one item; strata of a single student are left out. */
export function summariseStrata(strata: readonly Stratum[]): Finding<GroupDifference> {
	let [numerator, denominator, excess, spread, errors, focalAll, shareSum, used] = [0, 0, 0, 0, 0, 0, 0, 0];
	const kept = strata
		.map(({ referenceRight: a, referenceWrong: b, focalRight: c, focalWrong: d }) => ({ a, b, c, d, t: a + b + c + d }))
		.filter(({ t }) => t > 1);
	for (const { a, b, c, d, t } of kept) {
		numerator += (a * d) / t;
		denominator += (b * c) / t;
		excess += a - ((a + b) * (a + c)) / t;
		spread += ((a + b) * (c + d) * (a + c) * (b + d)) / (t * t * (t - 1));
		if (a + b > 0 && c + d > 0) {
			used += 1;
			focalAll += c + d;
			shareSum += (c + d) * (c / (c + d) - a / (a + b));
		}
	}
	if (numerator === 0 || denominator === 0 || spread === 0) {
		return refuse(
			'no-solution',
			'the odds ratio has no finite value: the groups do not both have right and wrong answers',
		);
	}
	const oddsRatio = numerator / denominator;
	for (const { a, b, c, d, t } of kept) {
		errors += ((a * d + oddsRatio * b * c) * (a + d + oddsRatio * (b + c))) / (t * t);
	}
	const standardError = 2.35 * Math.sqrt(errors / (2 * numerator * numerator));
	const delta = -2.35 * Math.log(oddsRatio);
	const uncorrected = (excess * excess) / spread;
	const probability = chiSquareAbove(uncorrected);
	const size = Math.abs(delta);
	const isLarge = size >= 1.5 && (size - 1) / standardError > 1.645;
	return found({
		oddsRatio,
		delta,
		standardError,
		chiSquare: (Math.abs(excess) - 0.5) ** 2 / spread,
		uncorrected,
		probability,
		shareDifference: shareSum / focalAll,
		size: size < 1 || probability > 0.05 ? 'small' : isLarge ? 'large' : 'moderate',
		strata: used,
	});
}
