import { type Finding, found, type Refusal, refuse } from './finding.ts';
import { momentsOf } from './moments.ts';
import { type ItemColumn, type ScoreTable, stateCodes } from './score-table.ts';
import { findTotals } from './totals.ts';
import { findScoreGroups, type ScoreGroups, type TieRule } from './upper-lower.ts';

/** How one option of a choice item worked. */
export interface OptionFigures {
	readonly option: string;
	readonly isKey: boolean;
	readonly count: number;
	/** Of all who were given the item; the 5 % rule looks at this share. */
	readonly shareOfAll: number;
	/** Of those who marked an option; 0 where nobody did. */
	readonly shareOfAnswered: number;
	/** Shares within the upper and lower score groups. */
	readonly upper: Finding<number>;
	readonly lower: Finding<number>;
	/** Correlation of marking this option with the total of the other items. */
	readonly correlation: Finding<number>;
	/** Mean total of the other items among those who marked it, in points. */
	readonly meanRest: Finding<number>;
	readonly flags: readonly OptionFlag[];
}

/**
 * - rarely-chosen: a distractor marked by fewer than 5 % of all.
 * - draws-strong: a distractor that goes with higher scores on the rest.
 * - key-draws-weak: a key that goes with lower scores on the rest; check the key first.
 * - above-key-in-upper: a distractor the upper group marks more than the key.
 */
export type OptionFlag = 'rarely-chosen' | 'draws-strong' | 'key-draws-weak' | 'above-key-in-upper';

/** The options of one item. */
export interface DistractorTable {
	readonly given: number;
	readonly answered: number;
	readonly options: readonly OptionFigures[];
	/** Distractors that work: marked by 5 % or more and going with lower scores. */
	readonly functioning: number;
	readonly distractors: number;
	readonly rule: TieRule;
}

/** Share of students below which a distractor does not work: BMC Medical Education 2009, 9:40 (abstract read). */
export const leastDistractorShare = 0.05;

/**
 * Distractor table of every item, in form order. A distractor functions when at least 5 % of all who were given the item
 * mark it and marking it goes with lower scores on the other items (BMC Medical Education 2009, 9:40; Haladyna & Downing
 * 1988, ED293851). Correlation as in measureCorrelations with marked = 1. Upper and lower groups as in findScoreGroups.
 * Refused for items not answered by marking one option, and without responses; single figures are refused where totals
 * are (see findTotals), or where nobody or everybody marked the option.
 */
export function tabulateDistractors(table: ScoreTable, rule: TieRule = 'shared'): readonly Finding<DistractorTable>[] {
	const totals = findTotals(table);
	const groups = findScoreGroups(table, rule);
	return table.columns.map((column) => {
		const { item, states } = column;
		if (item.options === undefined) {
			return refuse('not-applicable', `expected an item answered by marking one option, found "${item.id}"`);
		}
		const given = countGiven(states);
		if (given === 0) return refuse('too-few-students', `expected responses to item "${item.id}", found none`);
		const rest = totals.kind === 'refused' ? totals : restOf(totals.value.totals, column);
		const counts = countOptions(column, item.options, rest, groups);
		const answered = counts.reduce((sum, { count }) => sum + count, 0);
		const key = item.key ?? [];
		const keyUpper = Math.max(
			-1,
			...item.options.flatMap((option, at) => (key.includes(option) ? (counts[at]?.upper ?? -1) : [])),
		);
		const options = item.options.map((option, at) => {
			const figures = figuresOf(option, key.includes(option), counts[at] as OptionCount, {
				given,
				answered,
				rest,
				groups,
			});
			return { ...figures, flags: flagsOf(figures, keyUpper, counts[at]?.upper ?? 0) };
		});
		const distractors = options.filter(({ isKey }) => !isKey);
		const functioning = distractors.filter(
			({ flags }) => !flags.includes('rarely-chosen') && !flags.includes('draws-strong'),
		).length;
		return found({ given, answered, options, functioning, distractors: distractors.length, rule });
	});
}

interface Rest {
	readonly values: Float64Array;
	readonly mean: number;
	readonly variance: number;
}

interface OptionCount {
	readonly count: number;
	readonly restSum: number;
	/** Weights of the score groups. */
	readonly upper: number;
	readonly lower: number;
}

function countGiven(states: Uint8Array): number {
	let given = 0;
	for (let place = 0; place < states.length; place += 1) if (states[place] !== stateCodes['not-given']) given += 1;
	return given;
}

function restOf(totals: Float64Array, { points }: ItemColumn): Rest {
	const values = new Float64Array(totals.length);
	for (let place = 0; place < values.length; place += 1) {
		values[place] = (totals[place] as number) - (points[place] as number);
	}
	return { values, ...momentsOf(values) };
}

/** One pass over the students for all options: sums by answer, with a last place for no answer. */
function countOptions(
	{ answers, distinctAnswers }: ItemColumn,
	options: readonly string[],
	rest: Rest | Refusal,
	groups: Finding<ScoreGroups>,
): readonly OptionCount[] {
	const size = distinctAnswers.length + 1;
	const nothing = new Float64Array(answers.length);
	const values = 'values' in rest ? rest.values : nothing;
	const [above, below] = groups.kind === 'found' ? [groups.value.upper, groups.value.lower] : [nothing, nothing];
	const [counts, sums] = [new Float64Array(size), new Float64Array(size)];
	const [upper, lower] = [new Float64Array(size), new Float64Array(size)];
	for (let place = 0; place < answers.length; place += 1) {
		const answer = answers[place] as number;
		const at = answer < 0 ? size - 1 : answer;
		counts[at] = (counts[at] as number) + 1;
		sums[at] = (sums[at] as number) + (values[place] as number);
		upper[at] = (upper[at] as number) + (above[place] as number);
		lower[at] = (lower[at] as number) + (below[place] as number);
	}
	return options.map((option) => {
		const at = distinctAnswers.indexOf(option);
		return { count: counts[at] ?? 0, restSum: sums[at] ?? 0, upper: upper[at] ?? 0, lower: lower[at] ?? 0 };
	});
}

interface Around {
	readonly given: number;
	readonly answered: number;
	readonly rest: Rest | Refusal;
	readonly groups: Finding<ScoreGroups>;
}

function figuresOf(option: string, isKey: boolean, counted: OptionCount, around: Around): Omit<OptionFigures, 'flags'> {
	const { count, restSum, upper, lower } = counted;
	const { given, answered, rest, groups } = around;
	const within = (weight: number, size: 'upperSize' | 'lowerSize'): Finding<number> =>
		groups.kind === 'refused' ? groups : found(weight / groups.value[size]);
	return {
		option,
		isKey,
		count,
		shareOfAll: count / given,
		shareOfAnswered: answered === 0 ? 0 : count / answered,
		upper: within(upper, 'upperSize'),
		lower: within(lower, 'lowerSize'),
		correlation: 'values' in rest ? correlateOption(count, restSum, rest) : rest,
		meanRest: !('values' in rest)
			? rest
			: count === 0
				? refuse('too-few-students', `nobody marked option ${option}`)
				: found(restSum / count),
	};
}

/** Point-biserial from the two means: r = (M1 − M) / S × √(p/q). */
function correlateOption(count: number, restSum: number, { values, mean, variance }: Rest): Finding<number> {
	const share = count / values.length;
	if (share === 0 || share === 1)
		return refuse('no-variance', `${share === 0 ? 'nobody' : 'everybody'} marked the option`);
	if (variance === 0) return refuse('no-variance', 'the other items give everybody the same');
	return found(((restSum / count - mean) / Math.sqrt(variance)) * Math.sqrt(share / (1 - share)));
}

function flagsOf(
	{ isKey, shareOfAll, correlation }: Omit<OptionFigures, 'flags'>,
	keyUpper: number,
	upper: number,
): readonly OptionFlag[] {
	const r = correlation.kind === 'found' ? correlation.value : 0;
	if (isKey) return r < 0 ? ['key-draws-weak'] : [];
	return [
		...(shareOfAll < leastDistractorShare ? (['rarely-chosen'] as const) : []),
		...(r > 0 ? (['draws-strong'] as const) : []),
		...(upper > keyUpper && keyUpper >= 0 ? (['above-key-in-upper'] as const) : []),
	];
}
