import { type Finding, found, refuse } from './finding.ts';
import { momentsOf } from './moments.ts';
import type { ItemColumn, ScoreTable } from './score-table.ts';
import { hasPoints, isRightOrWrong, totalsOf } from './select-students.ts';

/** One total score and who has it. */
export interface ScoreCount {
	/** Points. */
	readonly score: number;
	readonly count: number;
	/** Students with this score or less. */
	readonly below: number;
	/** 100 × (below + half of those at the score)/n, 0 to 100. */
	readonly percentileRank: number;
	/** Lord's standard error at this score in points, √(x (k − x)/(k − 1)), for k items of one point. */
	readonly standardError: Finding<number>;
}

/** How total scores spread. */
export interface ScoreDistribution {
	readonly students: number;
	/** Points possible. */
	readonly maximum: number;
	readonly mean: number;
	readonly median: number;
	readonly lowest: number;
	readonly highest: number;
	/** Standard deviation in points, divided by n − 1; 0 for one student. */
	readonly deviation: number;
	/** Skewness g1 (third moment over the cube of the SD, divided by n); refused where all scores are the same. */
	readonly skewness: Finding<number>;
	/** Every whole score from 0 to the maximum and every score that occurs, lowest first. */
	readonly scores: readonly ScoreCount[];
}

/**
 * Distribution of total scores. Percentile ranks count half of those at the score (the middle definition); the standard
 * error at a score is Lord 1955's from the binomial (from memory), refused for items of other than one point. Refuses a table
 * without students or items, and one with responses that have no points.
 */
export function describeScores(table: ScoreTable): Finding<ScoreDistribution> {
	const { students, columns } = table;
	if (columns.length === 0) return refuse('too-few-items', 'expected items, found none');
	if (students.length === 0) return refuse('too-few-students', 'expected students, found none');
	if (columns.some(hasGaps)) {
		return refuse('incomplete', 'expected points for every response, found some not given or not rated');
	}
	const totals = totalsOf(table).sort();
	const { mean, variance, sampleVariance, count } = momentsOf(totals);
	const maximum = columns.reduce((sum, { item }) => sum + item.maximum, 0);
	const isOnePointEach = columns.every((column) => column.item.maximum === 1 && isRightOrWrong(column));
	const cubes = totals.reduce((sum, total) => sum + (total - mean) ** 3, 0) / count;
	const middle = count >> 1;
	const upper = totals[middle] as number;
	return found({
		students: count,
		maximum,
		mean,
		median: count % 2 === 1 ? upper : (upper + (totals[middle - 1] as number)) / 2,
		lowest: totals[0] as number,
		highest: totals[count - 1] as number,
		deviation: Math.sqrt(sampleVariance),
		skewness:
			variance === 0
				? refuse('no-variance', `expected different total scores, found ${totals[0]} points for every student`)
				: found(cubes / variance ** 1.5),
		scores: countScores(totals, maximum, isOnePointEach ? columns.length : undefined),
	});
}

function hasGaps({ states }: ItemColumn): boolean {
	for (let place = 0; place < states.length; place += 1) if (!hasPoints(states[place])) return true;
	return false;
}

function countScores(totals: Float64Array, maximum: number, items: number | undefined): readonly ScoreCount[] {
	const counts = new Map<number, number>();
	for (let score = 0; score <= maximum; score += 1) counts.set(score, 0);
	for (const total of totals) counts.set(total, (counts.get(total) ?? 0) + 1);
	let below = 0;
	return [...counts]
		.sort(([a], [b]) => a - b)
		.map(([score, count]) => {
			const percentileRank = (100 * (below + count / 2)) / totals.length;
			below += count;
			return { score, count, below, percentileRank, standardError: conditionalError(score, items) };
		});
}

function conditionalError(score: number, items: number | undefined): Finding<number> {
	if (items === undefined) return refuse('not-right-or-wrong', 'expected items of one point each');
	if (items < 2) return refuse('too-few-items', `expected two or more items, found ${items}`);
	return found(Math.sqrt((score * (items - score)) / (items - 1)));
}
