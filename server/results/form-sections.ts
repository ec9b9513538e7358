import { readReliability, readScores, readStandardError } from '../../item-bank/analysis/readings/test-readings.ts';
import { measureReliability } from '../../item-bank/analysis/reliability.ts';
import { describeScores } from '../../item-bank/analysis/score-distribution.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import { measureSplitHalf } from '../../item-bank/analysis/split-half.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { decisionSections } from './decision-section.ts';
import { figureOf, hideSmall, makeSection, type ReportCell, roundTo, tellReadings } from './report-text.ts';
import type { ResultTable } from './result-set.ts';
import { scaleSections } from './scale-sections.ts';
import { type ScoreCuts, spreadSection } from './score-sections.ts';

/** How the scores of a form spread and how far they can be trusted. Hidden in a shared copy of fewer than 10 students. */
export function formSections(
	result: ResultTable,
	title: string,
	copy: Report['copy'],
	cuts: ScoreCuts,
	depth: 'all' | 'meeting' = 'all',
): readonly ReportSection[] {
	const { table } = result;
	const hidden = hideSmall(table.students.length, copy);
	if (hidden !== undefined) return [{ title: `Scores: ${title}`, notes: [hidden] }];
	const { table: complete, leftOut } = keepComplete(table);
	const notes = [
		`${complete.students.length} students with points on every item${leftOut === 0 ? '' : `; ${leftOut} left out, whose responses are not all there or rated`}.`,
	];
	const scores = describeScores(complete);
	if (scores.kind === 'refused')
		return [{ title: `Scores: ${title}`, notes: [...notes, `No figures: ${scores.message}.`] }];
	const { maximum, mean, median, deviation, lowest, highest } = scores.value;
	const rows: ReportCell[][] = [
		['Points possible', roundTo(maximum, 2)],
		['Mean', roundTo(mean, 2)],
		['Median', roundTo(median, 2)],
		['Standard deviation', roundTo(deviation, 2)],
		...(copy === 'own' ? [['Lowest and highest', `${roundTo(lowest, 2)} and ${roundTo(highest, 2)}`]] : []),
	];
	const reliability = measureReliability(complete);
	if (reliability.kind === 'refused') {
		notes.push(
			...tellReadings([readScores(scores)], complete.students.length),
			`No reliability: ${reliability.message}.`,
		);
	} else {
		const { alpha, interval, standardError, isKr20 } = reliability.value;
		rows.push(
			[`Reliability (${isKr20 ? 'KR-20' : 'alpha'})`, roundTo(alpha, 2)],
			['95 % interval of it', `${roundTo(interval.low, 2)} to ${roundTo(interval.high, 2)}`],
			['Standard error of measurement, points', roundTo(standardError, 2)],
		);
		const halves = measureSplitHalf(complete);
		if (halves.kind === 'found') {
			rows.push(['Two halves (odd and even places), lengthened', figureOf(halves.value.spearmanBrown)]);
		}
		const takers = complete.students.length;
		notes.push(
			...tellReadings(
				[readScores(scores), readReliability(reliability, takers), readStandardError(reliability, takers)],
				takers,
			),
		);
	}
	return [
		makeSection(`Scores: ${title}`, ['Figure', 'Value'], rows, notes),
		spreadSection(scores.value, title, copy, cuts),
		...decisionSections(result, title, copy, cuts),
		...(depth === 'meeting' ? [] : scaleSections(result, title, copy, cuts)),
	];
}
