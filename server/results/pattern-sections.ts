import { diagnoseClass } from '../../item-bank/analysis/diagnosis/class.ts';
import { readItemPatterns } from '../../item-bank/analysis/diagnosis/item-patterns.ts';
import { diagnoseStudents, type StudentDiagnosis } from '../../item-bank/analysis/diagnosis/student.ts';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { hideSmall, intervalText, leastShared, makeSection, percent, type ReportCell } from './report-text.ts';
import type { ResultTable } from './result-set.ts';

/** What the wrong answers of every student of a table are consistent with. */
export function diagnoseTable({ table, places }: ResultTable): readonly StudentDiagnosis[] {
	return diagnoseStudents(
		table,
		places.map(({ item }) => readItemPatterns(item)),
	);
}

/** How many students' answers repeat each pattern. Hidden in a shared copy of fewer than 10 students. */
export function patternSections(result: ResultTable, title: string, copy: Report['copy']): readonly ReportSection[] {
	const heading = `Wrong ideas answers are consistent with: ${title}`;
	const hidden = hideSmall(result.table.students.length, copy);
	if (hidden !== undefined) return [{ title: heading, notes: [hidden] }];
	const diagnoses = diagnoseTable(result);
	const finding = diagnoseClass(diagnoses);
	if (finding.kind === 'refused') return [{ title: heading, notes: [finding.message] }];
	const { shares } = finding.value;
	const students = diagnoses.filter(({ answered }) => answered > 0).length;
	const rows = shares.map(({ pattern, repeated, hint, share, interval }): readonly ReportCell[] => {
		const isHidden = copy === 'shared' && repeated > 0 && repeated < leastShared;
		return [
			getPattern(pattern).name,
			isHidden ? `1 to ${leastShared - 1}` : repeated,
			isHidden ? null : percent(share),
			isHidden ? null : intervalText(interval),
			copy === 'shared' && hint > 0 && hint < leastShared ? `1 to ${leastShared - 1}` : hint,
		];
	});
	const bars = shares
		.filter(({ repeated }) => repeated > 0)
		.map(({ pattern, repeated, hint, interval }) => {
			const label = getPattern(pattern).name;
			const isFew = (count: number): boolean => copy === 'shared' && count > 0 && count < leastShared;
			if (isFew(repeated)) return { label };
			return { label, repeated, ...(isFew(hint) ? {} : { hint }), low: interval.low, high: interval.high };
		});
	return [
		makeSection(
			heading,
			['Pattern', 'Students, repeated', 'Share', '95 % interval', 'Students, hint only'],
			rows,
			[
				`${students} students who answered anything. Repeated: three or more answers far likelier under the pattern than without it. One student can count under several patterns, among them those the items do not tell apart.`,
				'Students who only guess are named so in fewer than 1 of 100 cases, measured on made-up students and the demo forms; a hint comes to 4 to 8 of 100 of them, on long forms to more.',
			],
			bars.length === 0 ? undefined : { kind: 'pattern-bars', students, bars },
		),
	];
}
