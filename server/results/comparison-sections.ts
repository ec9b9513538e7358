import { compareAnchors, compareScores, type ScoreComparison } from '../../item-bank/analysis/form-comparison.ts';
import { percentText } from '../../item-bank/analysis/readings/reading.ts';
import { readAnchors, readComparison } from '../../item-bank/analysis/readings/test-readings.ts';
import { measureReliability } from '../../item-bank/analysis/reliability.ts';
import type { ScoreTable } from '../../item-bank/analysis/score-table.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import {
	figureOf,
	hideSmall,
	intervalText,
	makeSection,
	percent,
	type ReportCell,
	roundTo,
	tellReadings,
} from './report-text.ts';

/** A form with its scores, students named by their codes. */
export interface ComparedForm {
	readonly title: string;
	readonly table: ScoreTable;
	/** How an item is called, by id. */
	readonly nameOf: (id: string) => string;
}

/** How every two forms came out beside each other, and on the items they share. Nothing is equated, and it says so. */
export function comparisonSections(forms: readonly ComparedForm[], copy: Report['copy']): readonly ReportSection[] {
	return forms.flatMap((first, index) =>
		forms.slice(index + 1).flatMap((second) => [scoreSection(first, second, copy), anchorSection(first, second, copy)]),
	);
}

function scoreSection(first: ComparedForm, second: ComparedForm, copy: Report['copy']): ReportSection {
	const heading = `Two forms side by side: ${first.title} and ${second.title}`;
	const hidden = hideSmaller(first, second, copy);
	if (hidden !== undefined) return { title: heading, notes: [hidden] };
	const comparison = compareScores(first.table, second.table);
	const fewest = Math.min(first.table.students.length, second.table.students.length);
	const notes = [
		...tellReadings([readComparison(comparison)], fewest),
		...(comparison.kind === 'found' ? [tellDifference(comparison.value), whoSat[comparison.value.design]] : []),
	];
	if (comparison.kind === 'refused') return { title: heading, notes };
	const { value } = comparison;
	const rows: readonly (readonly ReportCell[])[] = [
		['Students', value.first.students, value.second.students],
		['Items', first.table.columns.length, second.table.columns.length],
		['Points possible', pointsOf(first.table), pointsOf(second.table)],
		['Mean share of the points', percent(value.first.mean), percent(value.second.mean)],
		['Standard deviation of the share', percent(value.first.deviation), percent(value.second.deviation)],
		['Reliability', reliabilityOf(first.table), reliabilityOf(second.table)],
	];
	return makeSection(heading, ['Figure', first.title, second.title], rows, notes);
}

/** The second form less the first, in points of a hundred, and how those who sat both did. */
function tellDifference(value: ScoreComparison): string {
	const both =
		value.correlation.kind === 'found'
			? ` Correlation over students who sat both: ${figureOf(value.correlation)}.`
			: '';
	return `Mean of the second less the first: ${differenceText(value)} of the points, 95 % interval ${intervalText(value.interval)}.${both}`;
}

const whoSat: Readonly<Record<ScoreComparison['design'], string>> = {
	paired:
		'The same students sat both forms: a difference may lie in the items, in the order, and in what was learned between.',
	separate: 'Other students sat the second form: a difference may lie in the students as well as in the items.',
};

function anchorSection(first: ComparedForm, second: ComparedForm, copy: Report['copy']): ReportSection {
	const heading = `Items on both forms: ${first.title} and ${second.title}`;
	const hidden = hideSmaller(first, second, copy);
	if (hidden !== undefined) return { title: heading, notes: [hidden] };
	const comparison = compareAnchors(first.table, second.table);
	if (comparison.kind === 'refused') return { title: heading, notes: [`No comparison: ${comparison.message}.`] };
	const { items, anchors, rest, gap } = comparison.value;
	const rows: readonly (readonly ReportCell[])[] = [
		...items.map((item): readonly ReportCell[] => [
			first.nameOf(item.id),
			percent(item.first),
			percent(item.second),
			`${percent(item.second - item.first)}`,
		]),
		['All of these', percent(anchors.first.mean), percent(anchors.second.mean), differenceText(anchors)],
		...(rest.kind === 'found'
			? [
					[
						'Everything else',
						percent(rest.value.first.mean),
						percent(rest.value.second.mean),
						differenceText(rest.value),
					],
				]
			: []),
	];
	return makeSection(heading, ['Item', first.title, second.title, 'Difference'], rows, [
		...tellReadings([readAnchors(comparison)], Math.min(anchors.first.students, anchors.second.students)),
		`${anchors.first.students} and ${anchors.second.students} students. 95 % interval of the difference on these items: ${intervalText(anchors.interval)}.${gap.kind === 'found' ? '' : ' There is nothing beside these items to set against them.'}`,
	]);
}

function hideSmaller(first: ComparedForm, second: ComparedForm, copy: Report['copy']): string | undefined {
	return hideSmall(Math.min(first.table.students.length, second.table.students.length), copy);
}

function pointsOf({ columns }: ScoreTable): number {
	return roundTo(
		columns.reduce((sum, { item }) => sum + item.maximum, 0),
		2,
	);
}

function reliabilityOf(table: ScoreTable): number | null {
	const finding = measureReliability(keepComplete(table).table);
	return finding.kind === 'found' ? roundTo(finding.value.alpha, 2) : null;
}

function differenceText({ difference }: ScoreComparison): string {
	return `${difference > 0 ? 'higher by ' : difference < 0 ? 'lower by ' : ''}${percentText(Math.abs(difference))}`;
}
