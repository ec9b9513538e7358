import { leastStudents } from '../../item-bank/analysis/evidence/suppression.ts';
import type { Finding } from '../../item-bank/analysis/finding.ts';
import type { Interval } from '../../item-bank/analysis/intervals.ts';
import type { Reading } from '../../item-bank/analysis/readings/reading.ts';
import type { Plot, Report, ReportSection } from '../../item-bank/types.ts';

/** Cells of a row of a report. */
export type ReportCell = string | number | null;

/** A share in whole percent. */
export function percent(share: number): string {
	return `${String(Math.round(share * 100) + 0).replace('-', '−')} %`;
}

/** An interval in whole percent, or why there is none. */
export function intervalText(interval: Finding<Interval> | Interval): string {
	if ('kind' in interval) return interval.kind === 'found' ? intervalText(interval.value) : 'none';
	const [low, high] = [interval.low, interval.high].map((bound) =>
		String(Math.round(bound * 100) + 0).replace('-', '−'),
	);
	return `${low} to ${high} %`;
}

/** A figure to two places; null where it was refused. */
export function figureOf(finding: Finding<number>, digits = 2): number | null {
	return finding.kind === 'found' ? roundTo(finding.value, digits) : null;
}

/** A number to so many places. */
export function roundTo(value: number, digits: number): number {
	const grain = 10 ** digits;
	// 0 and not −0.
	return Math.round(value * grain) / grain + 0;
}

/** In a shared copy fewer students than this are not counted out: it could be told who they are. */
export const leastShared = 3;

/** A section with a table, and a plot of it where there is one. */
export function makeSection(
	title: string,
	headings: readonly string[],
	rows: readonly (readonly ReportCell[])[],
	notes: readonly string[] = [],
	plot?: Plot,
): ReportSection {
	return {
		title,
		notes,
		...(plot === undefined ? {} : { plot }),
		table: { headings, rows: rows.map((row) => [...row]) },
	};
}

/** Sentences that stand on reports: DESIGN.md, "Cautions the product must show". */
export function listCautions(copy: Report['copy'], isSimulated: boolean, isAcrossForms: boolean): readonly string[] {
	return [
		...(isSimulated ? ['SIMULATED: these responses come from a simulation and from no child.'] : []),
		'A common assessment supports teaching decisions; no weighty decision about a child rests on one score.',
		'Every percentage stands beside its counts. Intervals are 95 % intervals: the fewer students and items, the wider.',
		'What wrong answers are consistent with is a hint and no diagnosis: one answer can come from several ideas.',
		...(isAcrossForms
			? ['Two forms built to one plan are not equated: a difference between them may lie in the items.']
			: []),
		copy === 'own'
			? 'The class teacher’s own copy, with student codes: student data, not to be passed on. Local law and district policy come first.'
			: 'Groups under 10 students are hidden, and whatever would give them away. Comparing this report with another on nearly the same students can still tell; do not share both.',
		'Items and keys are confidential while they are live.',
	];
}

/** Readings as sentences, hints marked once, and a sentence on where their thresholds come from. */
export function tellReadings(readings: readonly Reading[], students: number): readonly string[] {
	const words = readings.map(({ text, words: plain = text }) => plain).join(' ');
	const isSoftened = readings.some(({ words: plain }) => plain !== undefined);
	const bases = [...new Set(readings.map(({ basis }) => basis))].join('; ');
	return [isSoftened ? `Hints only, from ${students} students. ${words}` : words, `Thresholds: ${bases}.`];
}

/** Why figures on so few students are not shown in a copy; undefined where they are. */
export function hideSmall(students: number, copy: Report['copy']): string | undefined {
	if (students === 0) return 'No student has responses.';
	if (copy === 'own' || students >= leastStudents) return undefined;
	return `Hidden: fewer than ${leastStudents} students.`;
}
