import { diagnoseClass } from '../../item-bank/analysis/diagnosis/class.ts';
import { readItemPatterns } from '../../item-bank/analysis/diagnosis/item-patterns.ts';
import { diagnoseStudents, type StudentDiagnosis } from '../../item-bank/analysis/diagnosis/student.ts';
import { printMathematics } from '../../item-bank/expression/print.ts';
import { numberNode, operationNode } from '../../item-bank/expression/tree.ts';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { PatternId } from '../../item-bank/patterns/pattern.ts';
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
	const bars = shares.map(({ pattern, repeated, hint, interval }) => {
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
			],
			bars.length === 0 ? undefined : { kind: 'pattern-bars', students, bars },
		),
	];
}

/** Proposals for regrouping by what answers are consistent with; names codes, so it belongs to the teacher's own copy. */
export function groupSections(result: ResultTable, title: string, copy: Report['copy']): readonly ReportSection[] {
	const heading = `Who could work on the same thing: ${title}`;
	if (copy === 'shared')
		return [{ title: heading, notes: ['Names student codes: only in the class teacher’s own copy.'] }];
	const finding = diagnoseClass(diagnoseTable(result));
	if (finding.kind === 'refused') return [{ title: heading, notes: [finding.message] }];
	const { groups, single, withoutPattern, allRight, tooFewAnswers } = finding.value;
	const list = (codes: readonly string[]): string => codes.join(', ');
	const rows = groups.map(({ pattern, notToldApart, students, probes }): readonly ReportCell[] => [
		nameOf(pattern),
		notToldApart.map(nameOf).join('; '),
		students.length,
		list(students),
		probes.items
			.map(({ operator, left, right }) =>
				printMathematics(operationNode(operator, numberNode(left), numberNode(right))),
			)
			.join(', '),
	]);
	const rest: readonly (readonly ReportCell[])[] = [
		['A pattern nobody else shares', '', single.length, list(single), ''],
		['Wrong answers that repeat no pattern', '', withoutPattern.length, list(withoutPattern), ''],
		['Everything answered is right', '', allRight.length, list(allRight), ''],
		['Too few answers to say', '', tooFewAnswers.length, list(tooFewAnswers), ''],
	].filter(([, , count]) => count !== 0);
	return [
		makeSection(
			heading,
			['Answers consistent with', 'Not told apart from', 'Students', 'Codes', 'Ask next'],
			[...rows, ...rest],
			['A proposal from answers on one day: ask the next questions before acting. The teacher knows more.'],
		),
	];
}

function nameOf(pattern: PatternId): string {
	return getPattern(pattern).name;
}
