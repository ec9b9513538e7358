import { diagnoseClass } from '../../item-bank/analysis/diagnosis/class.ts';
import { measureDifficulty } from '../../item-bank/analysis/difficulty.ts';
import { foundValue } from '../../item-bank/analysis/finding.ts';
import { measureCorrelations } from '../../item-bank/analysis/point-biserial.ts';
import { measureReliability } from '../../item-bank/analysis/reliability.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { PatternId } from '../../item-bank/patterns/pattern.ts';
import type { Evidence, EvidenceEntry, Report, ReportSection } from '../../item-bank/types.ts';
import type { ClassPatterns } from './class-board.ts';
import { nameModel } from './evidence-report.ts';
import { diagnoseTable } from './pattern-sections.ts';
import { hideSmall, intervalText, leastShared, makeSection, percent, type ReportCell, roundTo } from './report-text.ts';
import type { ResultSet, ResultTable } from './result-set.ts';

/** A form as the summary sees it. */
export interface SummedForm {
	/** Title of the form alone. */
	readonly form: string;
	readonly sets: readonly ResultSet[];
	readonly result: ResultTable;
	readonly byClass: ClassPatterns;
}

/** Cells named at either end, wrong ideas and items named for a form, at most. */
const most = { cells: 3, patterns: 3, items: 6 };

/** What a meeting of forty minutes needs first, on one page: what to talk about, what it rests on, how sure it is. */
export function summarySection(
	forms: readonly SummedForm[],
	{ cells, students }: Pick<Evidence, 'cells' | 'students'>,
	copy: Report['copy'],
): ReportSection {
	const rows: readonly ReportCell[][] = [
		['Who answered', tellWho(forms, students), 'Answers of these days: they say nothing of what was learned since.'],
		...tellCells(cells),
		...forms.map((form) => ['Wrong ideas answers repeat', ...tellPatterns(form, copy)]),
		...forms.map((form) => ['Items to look at before trusting them', ...tellItems(form, copy)]),
		...forms.map((form) => ['How far totals can be trusted', ...tellTotals(form, copy)]),
	];
	return makeSection(
		'For the meeting',
		['Question', 'What the responses show', 'How sure'],
		rows.map((row) => [...row]),
		[
			'To settle together: which cell of the board is taught again first, and with which model; which items are mended or left out before anything rests on them; who asks which groups the next questions (class reports name items for them); when the same standards are asked again.',
		],
	);
}

function tellWho(forms: readonly SummedForm[], students: number): string {
	const sittings = forms.flatMap(({ sets }) => sets.map(({ entry }) => entry.sitting));
	const dates = [...new Set(sittings.map(({ date }) => date))].sort();
	const groups = new Set(sittings.map(({ group }) => group)).size;
	const when = dates.length > 1 ? `${dates[0]} to ${dates.at(-1)}` : dates[0];
	const list = forms.map(({ form, result }) => `${form}: ${result.table.students.length}`);
	return `${students} students of ${groups} ${groups === 1 ? 'group' : 'groups'}, ${when}. ${list.join(', ')}.`;
}

/** The cells where fewest and most points were earned. The extremes of many cells look extreme by chance too, and it says so. */
function tellCells(cells: Evidence['cells']): readonly ReportCell[][] {
	const shown = cells.filter(
		({ standard, model, share }) => standard !== undefined && model !== undefined && share !== undefined,
	);
	const ranked = [...shown].sort((a, b) => (a.share ?? 0) - (b.share ?? 0));
	if (ranked.length === 0) return [['Standards and models', 'Every cell is hidden or empty.', '']];
	const count = Math.min(most.cells, Math.ceil(ranked.length / 2));
	const low = ranked.slice(0, count);
	const high = ranked.slice(count).slice(-count).reverse();
	return [
		['Fewest points earned', low.map(tellCell).join('; '), compareEnds(low, high, shown.length)],
		...(high.length === 0
			? []
			: [
					[
						'Most points earned',
						high.map(tellCell).join('; '),
						'Items differ in difficulty: a cell can be high because its items are easy.',
					],
				]),
	];
}

function tellCell({ standard, model, share = 0, low, high, items, students }: EvidenceEntry): string {
	const span = low === undefined || high === undefined ? '' : ` (${intervalText({ low, high })})`;
	return `${standard} ${nameModel(model)} ${percent(share)}${span}, ${items} ${items === 1 ? 'item' : 'items'}, ${students ?? 0} students`;
}

function compareEnds(low: readonly EvidenceEntry[], high: readonly EvidenceEntry[], cells: number): string {
	const few = low.some(({ items }) => items < 3)
		? ' Cells of fewer than 3 items rest on those items more than on the standard.'
		: '';
	const top = Math.max(0, ...low.map((cell) => cell.high ?? 1));
	const isApart = high.some((cell) => (cell.low ?? 0) > top);
	const order = isApart
		? `Lowest of ${cells} cells, apart from some of the highest by their intervals.`
		: `Lowest of ${cells} cells; their intervals reach into those of the highest, so that the order may be chance.`;
	return `${order}${few}`;
}

function tellPatterns({ form, result, byClass }: SummedForm, copy: Report['copy']): readonly [string, string] {
	const hidden = hideSmall(result.table.students.length, copy);
	if (hidden !== undefined) return [`${form}: hidden.`, hidden];
	const diagnoses = diagnoseTable(result);
	const answered = diagnoses.filter((student) => student.answered > 0).length;
	const shares = foundValue(diagnoseClass(diagnoses))?.shares ?? [];
	const told = shares
		.filter(({ repeated }) => repeated >= (copy === 'shared' ? leastShared : 1))
		.slice(0, most.patterns);
	if (told.length === 0) return [`${form}: none by ${leastShared} students or more.`, `${answered} students.`];
	const list = told.map(
		({ pattern, repeated, interval }) =>
			`${getPattern(pattern).name}, ${repeated} of ${answered} (${intervalText(interval)})${tellWhere(byClass, pattern, repeated)}`,
	);
	return [
		`${form}: ${list.join('; ')}.`,
		'Consistent with, three answers or more each; one answer can fit several ideas or none.',
	];
}

/** The class that most of the students are in, where it may be told and is no accident of one or two. */
function tellWhere({ classes, patterns }: ClassPatterns, pattern: PatternId, all: number): string {
	if (classes.length < 2) return '';
	const counts = patterns.find((each) => each.pattern === pattern)?.counts ?? [];
	const place = counts.findIndex((count = 0) => count >= leastShared && count * 2 > all);
	const found = classes[place];
	return found === undefined
		? ''
		: `, ${counts[place] === all ? 'all' : `${counts[place]} of them`} in ${found.name} (${found.students} students)`;
}

function tellItems({ form, result }: SummedForm, copy: Report['copy']): readonly [string, string] {
	const { table, places } = result;
	const hidden = hideSmall(table.students.length, copy);
	if (hidden !== undefined) return [`${form}: hidden.`, hidden];
	const { table: complete } = keepComplete(table);
	const correlations = measureCorrelations(complete);
	const weak = table.columns.flatMap((column, index) => {
		const value = correlations[index] && foundValue(correlations[index].corrected);
		const share = foundValue(measureDifficulty(column))?.share;
		if (value === undefined || value >= 0.1) return [];
		return [{ label: places[index]?.label ?? '', value, share: share ?? 0 }];
	});
	const students = complete.students.length;
	const sure = `${students} students: a correlation moves by about ${roundTo(1.96 / Math.sqrt(Math.max(1, students)), 2)} either way. Key and wording first.`;
	if (weak.length === 0) return [`${form}: none by these figures (correlation with the rest below .10).`, sure];
	const list = [...weak]
		.sort((a, b) => a.value - b.value)
		.slice(0, most.items)
		.map(
			({ label, value, share }) =>
				`place ${label} (r ${value.toFixed(2).replace('-', '−')}, ${percent(share)} of the points)`,
		);
	const rest = weak.length > most.items ? ` and ${weak.length - most.items} more` : '';
	return [`${form}: ${list.join('; ')}${rest}.`, sure];
}

function tellTotals({ form, result }: SummedForm, copy: Report['copy']): readonly [string, string] {
	const hidden = hideSmall(result.table.students.length, copy);
	if (hidden !== undefined) return [`${form}: hidden.`, hidden];
	const { table } = keepComplete(result.table);
	const found = measureReliability(table);
	if (found.kind === 'refused') return [`${form}: no figure.`, `${found.message}.`];
	const { alpha, interval, standardError } = found.value;
	return [
		`${form}: reliability ${alpha.toFixed(2)} (${interval.low.toFixed(2)} to ${interval.high.toFixed(2)}), two totals in three would come out within ${roundTo(standardError, 1)} points again.`,
		alpha >= 0.7
			? `${table.students.length} students. Good for groups; for one child only the start of a conversation.`
			: `${table.students.length} students. Look at single items and cells rather than at totals.`,
	];
}
