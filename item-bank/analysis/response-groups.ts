import { type Finding, found, refuse } from './finding.ts';
import { type ScoreTable, stateCodes } from './score-table.ts';
import { findTotals } from './totals.ts';

/** For each answer the share of each score group that gave it: the lines of a plot. */
export interface ResponseGroupPlot {
	/** Mean total of each group, lowest group first. */
	readonly meanTotals: readonly number[];
	/** Students of each group, fractions where ties are shared. */
	readonly sizes: readonly number[];
	readonly lines: readonly ResponseLine[];
}

/** One answer over the groups. */
export interface ResponseLine {
	/** Option id or number; "right" for right answers where no answer is kept, else "other", "omitted", "invalid". */
	readonly answer: string;
	readonly isKey: boolean;
	/** Shares of each group, lowest group first, 0 to 1. */
	readonly shares: readonly number[];
}

/**
 * Plot data of the responses to one item over score groups of equal size, by total score. Students tied at a boundary are
 * shared between the two groups in proportion, so the order of the students does not matter. Answers are the options of
 * a choice, else the key and the most frequent wrong answers; the rest is "other". Refused like findTotals, for fewer
 * students than twice the groups, and for an item the table does not have.
 */
export function plotResponseGroups(
	table: ScoreTable,
	place: number,
	groups = 5,
	mostAnswers = 4,
): Finding<ResponseGroupPlot> {
	const finding = findTotals(table);
	if (finding.kind === 'refused') return finding;
	const column = table.columns[place];
	if (column === undefined) {
		return refuse('not-applicable', `expected an item from 0 to ${table.columns.length - 1}, found ${place}`);
	}
	const count = table.students.length;
	if (count < 2 * groups) return refuse('too-few-students', `expected ${2 * groups} students or more, found ${count}`);
	const { totals } = finding.value;
	const shareOf = shareGroups(totals, groups);
	const labels = listAnswers(column.item, column, mostAnswers);
	const weights = labels.map(() => new Float64Array(groups));
	const sizes = new Float64Array(groups);
	const sums = new Float64Array(groups);
	const lineOf = makeLineOf(column, labels);
	for (let student = 0; student < count; student += 1) {
		const total = totals[student] as number;
		const line = weights[lineOf(student)] as Float64Array;
		for (const { group, share } of shareOf.get(total) ?? []) {
			sizes[group] = (sizes[group] as number) + share;
			sums[group] = (sums[group] as number) + share * total;
			line[group] = (line[group] as number) + share;
		}
	}
	const key = column.item.key ?? ['right'];
	const lines = labels.map((answer, at) => ({
		answer,
		isKey: key.includes(answer) || answer === 'right',
		shares: [...(weights[at] as Float64Array)].map((weight, group) => weight / (sizes[group] as number)),
	}));
	const meanTotals = [...sums].map((sum, group) => sum / (sizes[group] as number));
	return found({
		meanTotals,
		sizes: [...sizes],
		lines: lines.filter(({ shares }) => shares.some((share) => share > 0)),
	});
}

/** For each total, how much of a student with it stands in which group. */
function shareGroups(
	totals: Float64Array,
	groups: number,
): ReadonlyMap<number, readonly { readonly group: number; readonly share: number }[]> {
	const counts = new Map<number, number>();
	for (const total of totals) counts.set(total, (counts.get(total) ?? 0) + 1);
	const size = totals.length / groups;
	const shares = new Map<number, readonly { readonly group: number; readonly share: number }[]>();
	let from = 0;
	for (const [total, count] of [...counts].sort(([a], [b]) => a - b)) {
		const to = from + count;
		const parts = Array.from({ length: groups }, (_, group) => ({
			group,
			share: Math.max(0, Math.min(to, (group + 1) * size) - Math.max(from, group * size)) / count,
		}));
		shares.set(
			total,
			parts.filter(({ share }) => share > 0),
		);
		from = to;
	}
	return shares;
}

type Column = ScoreTable['columns'][number];

function listAnswers(item: Column['item'], column: Column, most: number): readonly string[] {
	const states = ['other', 'omitted', 'invalid'];
	if (item.options !== undefined) return [...item.options, ...states];
	const counts = new Float64Array(column.distinctAnswers.length);
	for (const answer of column.answers) if (answer >= 0) counts[answer] = (counts[answer] as number) + 1;
	const key = item.key ?? [];
	const frequent = [...column.distinctAnswers.keys()]
		.filter((at) => !key.includes(column.distinctAnswers[at] as string))
		.sort((a, b) => (counts[b] as number) - (counts[a] as number))
		.slice(0, most)
		.map((at) => column.distinctAnswers[at] as string);
	return [...(key.length > 0 ? key : ['right']), ...frequent, ...states];
}

function makeLineOf(column: Column, labels: readonly string[]): (student: number) => number {
	const lines = column.distinctAnswers.map((answer) => labels.indexOf(answer));
	const [other, omitted, invalid] = ['other', 'omitted', 'invalid'].map((label) => labels.indexOf(label));
	const right = labels.indexOf('right');
	return (student) => {
		const state = column.states[student];
		if (state === stateCodes.omitted || state === stateCodes['not-reached']) return omitted ?? 0;
		if (state === stateCodes.invalid) return invalid ?? 0;
		const line = lines[column.answers[student] as number] ?? -1;
		if (line >= 0) return line;
		return right >= 0 && column.points[student] === column.item.maximum ? right : (other ?? 0);
	};
}
