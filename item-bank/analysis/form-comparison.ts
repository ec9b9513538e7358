import { type Finding, found, refuse } from './finding.ts';
import type { Interval } from './intervals.ts';
import { covarianceOf, momentsOf } from './moments.ts';
import { studentQuantile } from './numbers/beta.ts';
import type { ScoreTable } from './score-table.ts';
import { keepComplete, selectItems, totalsOf } from './select-students.ts';

/** How two forms, or the same items in two groups, came out. Built to one plan is not the same as equated. */
export interface ScoreComparison {
	/** Mean share of the points, 0 to 1, and standard deviation of the share (divided by n − 1). */
	readonly first: ScoreSummary;
	readonly second: ScoreSummary;
	/** second − first. */
	readonly difference: number;
	/** 95 % interval of the difference. */
	readonly interval: Interval;
	/** Correlation of the two forms over students who took both; refused where fewer than three did. */
	readonly correlation: Finding<number>;
	/** paired: the same students took both; separate: Welch's interval for two groups. */
	readonly design: 'paired' | 'separate';
}

/** One side of a comparison. */
export interface ScoreSummary {
	readonly students: number;
	readonly mean: number;
	readonly deviation: number;
}

/** Anchor items in two groups, and how much of a difference between forms the groups may explain. */
export interface AnchorComparison {
	/** Item by item: share of the points in each group. */
	readonly items: readonly { readonly id: string; readonly first: number; readonly second: number }[];
	/** All anchors together: second − first is how the groups differ on the same items. */
	readonly anchors: ScoreComparison;
	/** Everything beside the anchors: how the groups differ on different items. */
	readonly rest: Finding<ScoreComparison>;
	/** The difference on the rest less the difference on the anchors: what the forms, and not the groups, may explain. */
	readonly gap: Finding<number>;
}

/**
 * Compares total scores as shares of the points. When exactly the same students took both, mean of the differences ± t SD/√n;
 * else Welch 1947's interval with its degrees of freedom (from memory; held against R's t.test). Students who appear on one
 * side only make it separate. Incomplete students are left out. Refused below two students a side, or without items.
 */
export function compareScores(first: ScoreTable, second: ScoreTable): Finding<ScoreComparison> {
	if (first.columns.length === 0 || second.columns.length === 0) {
		return refuse('too-few-items', 'expected items on both sides, found none on one');
	}
	const [one, two] = [first, second].map(sharesByStudent);
	if (one === undefined || two === undefined || one.size < 2 || two.size < 2) {
		const found = `${one?.size ?? 0} and ${two?.size ?? 0}`;
		return refuse('too-few-students', `expected two or more students with every item on both sides, found ${found}`);
	}
	const both = [...one.keys()].filter((student) => two.has(student));
	const isPaired = both.length === one.size && both.length === two.size;
	const [a, b] = [one, two].map((shares) => momentsOf([...shares.values()]));
	if (a === undefined || b === undefined) return refuse('too-few-students', 'expected students on both sides');
	const difference = b.mean - a.mean;
	const pairs = [one, two].map((shares) => Float64Array.from(both, (student) => shares.get(student) ?? 0));
	const reach = isPaired ? pairedReach(pairs) : welchReach(a, b);
	const summary = ({ count, mean, sampleVariance }: typeof a): ScoreSummary => ({
		students: count,
		mean,
		deviation: Math.sqrt(sampleVariance),
	});
	return found({
		first: summary(a),
		second: summary(b),
		difference,
		interval: { low: Math.max(-1, difference - reach), high: Math.min(1, difference + reach) },
		correlation: correlate(pairs),
		design: isPaired ? 'paired' : 'separate',
	});
}

/**
 * Compares two groups on anchor items, those with the same id and version on both forms, and on the rest. It describes; with the
 * numbers of one department nothing is equated. Refused without common items, and like {@link compareScores}.
 */
export function compareAnchors(first: ScoreTable, second: ScoreTable): Finding<AnchorComparison> {
	const name = ({ columns }: ScoreTable, place: number): string =>
		`${columns[place]?.item.id} ${columns[place]?.item.version}`;
	const [places1, places2] = [first, second].map(({ columns }) => [...columns.keys()]) as [number[], number[]];
	const common = places1.flatMap((place) => {
		const other = places2.find((one) => name(second, one) === name(first, place));
		return other === undefined ? [] : [{ place, other }];
	});
	if (common.length === 0)
		return refuse('too-few-items', 'expected items with the same version on both forms, found none');
	const [inFirst, inSecond] = [common.map(({ place }) => place), common.map(({ other }) => other)];
	const anchors = compareScores(selectItems(first, inFirst), selectItems(second, inSecond));
	if (anchors.kind === 'refused') return anchors;
	const rest = compareScores(
		selectItems(
			first,
			places1.filter((place) => !inFirst.includes(place)),
		),
		selectItems(
			second,
			places2.filter((place) => !inSecond.includes(place)),
		),
	);
	return found({
		items: common.map(({ place, other }) => ({
			id: first.columns[place]?.item.id ?? '',
			first: meanShare(selectItems(first, [place])),
			second: meanShare(selectItems(second, [other])),
		})),
		anchors: anchors.value,
		rest,
		gap: rest.kind === 'refused' ? rest : found(rest.value.difference - anchors.value.difference),
	});
}

function sharesByStudent(table: ScoreTable): ReadonlyMap<string, number> {
	const { table: complete } = keepComplete(table);
	const possible = complete.columns.reduce((sum, { item }) => sum + item.maximum, 0);
	const totals = totalsOf(complete);
	return new Map(complete.students.map((student, at) => [student, (totals[at] as number) / possible]));
}

function meanShare(table: ScoreTable): number {
	return momentsOf([...sharesByStudent(table).values()]).mean;
}

function pairedReach([a = new Float64Array(), b = new Float64Array()]: readonly Float64Array[]): number {
	const { count, sampleVariance } = momentsOf(a.map((value, at) => (b[at] as number) - value));
	return studentQuantile(0.025, count - 1) * Math.sqrt(sampleVariance / count);
}

type Moments = ReturnType<typeof momentsOf>;

function welchReach(a: Moments, b: Moments): number {
	const [first, second] = [a.sampleVariance / a.count, b.sampleVariance / b.count];
	if (first + second === 0) return 0;
	const degrees = (first + second) ** 2 / (first ** 2 / (a.count - 1) + second ** 2 / (b.count - 1));
	return studentQuantile(0.025, degrees) * Math.sqrt(first + second);
}

function correlate([a = new Float64Array(), b = new Float64Array()]: readonly Float64Array[]): Finding<number> {
	if (a.length < 3)
		return refuse('too-few-students', `expected three or more students on both sides, found ${a.length}`);
	const [one, two] = [momentsOf(a), momentsOf(b)];
	if (one.variance === 0 || two.variance === 0) return refuse('no-variance', 'expected different scores on both sides');
	return found(covarianceOf(a, one.mean, b, two.mean) / Math.sqrt(one.variance * two.variance));
}
