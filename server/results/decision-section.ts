import { measureConsistency } from '../../item-bank/analysis/decision-consistency.ts';
import { readConsistency } from '../../item-bank/analysis/readings/test-readings.ts';
import { describeScores } from '../../item-bank/analysis/score-distribution.ts';
import { keepComplete } from '../../item-bank/analysis/select-students.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { hideSmall, makeSection, percent, type ReportCell, roundTo } from './report-text.ts';
import type { ResultTable } from './result-set.ts';
import { barScores, type ScoreCuts, shareBars } from './score-sections.ts';

/** How far a decision at a cut would stand on another form alike. Nothing where no cut is given. */
export function decisionSections(
	{ table }: ResultTable,
	title: string,
	copy: Report['copy'],
	cuts: ScoreCuts,
): readonly ReportSection[] {
	if (cuts.length === 0) return [];
	const heading = `Decisions at a cut: ${title}`;
	const { table: complete } = keepComplete(table);
	const students = complete.students.length;
	const hidden = hideSmall(students, copy);
	if (hidden !== undefined) return [{ title: heading, notes: [hidden] }];
	const scores = describeScores(complete);
	const bars = scores.kind === 'found' ? shareBars(barScores(scores.value), copy, cuts) : [];
	// A cut within a bar of several scores would tell how few students stand between its ends.
	const isTold = (from: number): boolean => copy === 'own' || bars.some((bar) => bar.from === from);
	const isOnePoint = complete.columns.every(({ item }) => item.maximum === 1);
	const rows = cuts.map(({ label, from }): readonly ReportCell[] => {
		const found = measureConsistency(complete, from, isOnePoint ? 'huynh' : 'effective-length');
		const { text } = readConsistency(found, students);
		if (found.kind === 'refused') return [label, from, null, null, null, null, text];
		const { passing, agreement, chance, kappa } = found.value;
		const reached = Math.round(passing * students);
		return [
			label,
			from,
			isTold(from) ? `${percent(passing)} (${reached} of ${students})` : 'hidden',
			roundTo(agreement, 2),
			roundTo(chance, 2),
			roundTo(kappa, 2),
			text,
		];
	});
	return [
		makeSection(
			heading,
			['Cut', 'From points', 'At or above', 'Same side twice', 'By chance', 'Kappa', 'In words'],
			rows,
			[
				`${students} students. Estimated from this one sitting with a model of what a second form alike would give (${isOnePoint ? 'Huynh 1976' : 'Livingston and Lewis 1995'}). A cut divides scores, not children: those near it would often change sides.`,
			],
		),
	];
}
