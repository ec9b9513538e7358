import { measureDifficulty } from '../../item-bank/analysis/difficulty.ts';
import { foundValue } from '../../item-bank/analysis/finding.ts';
import { totalsOf } from '../../item-bank/analysis/select-students.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { diagnoseTable } from './pattern-sections.ts';
import { hideSmall, intervalText, makeSection, percent, type ReportCell, roundTo } from './report-text.ts';
import type { ResultSet, ResultTable } from './result-set.ts';

/** One class on one day: who sat it, item by item, and in the teacher's own copy student by student. */
export function classSections(
	set: ResultSet,
	result: ResultTable,
	title: string,
	copy: Report['copy'],
): readonly ReportSection[] {
	const { table, places } = result;
	const hidden = hideSmall(table.students.length, copy);
	const absent = set.roster.filter((code) => !table.students.includes(code));
	const counts = `${table.students.length} students with responses, ${absent.length} of the group’s list without.`;
	if (hidden !== undefined) return [{ title, notes: [hidden] }];
	const items = table.columns.map((column, index): readonly ReportCell[] => {
		const value = foundValue(measureDifficulty(column));
		return [
			places[index]?.label ?? '',
			printItemName(places[index]?.record.item.name ?? ''),
			value === undefined ? null : percent(value.share),
			value === undefined ? null : intervalText(value.interval),
			value?.full ?? 0,
			value?.responses ?? 0,
		];
	});
	const sections = [
		makeSection(
			title,
			['Place', 'Item', 'Share of points', '95 % interval', 'Students with all points', 'Responses'],
			items,
			[counts],
		),
	];
	return copy === 'shared' ? sections : [...sections, studentSection(result, absent)];
}

function studentSection(result: ResultTable, absent: readonly string[]): ReportSection {
	const totals = totalsOf(result.table);
	const most = roundTo(
		result.table.columns.reduce((sum, { item }) => sum + item.maximum, 0),
		2,
	);
	const rows = diagnoseTable(result).map((student, index): readonly ReportCell[] => {
		const [first] = student.findings;
		const hint = first?.strength === 'hint' ? ' (a hint only)' : '';
		return [
			student.student,
			roundTo(totals[index] ?? 0, 2),
			student.answered,
			student.omitted,
			student.invalid,
			first === undefined
				? ''
				: `${[...first.patterns, ...first.rivals].map((id) => getPattern(id).name).join('; or ')}: ${first.consistent} of ${first.opportunities} answers${hint}`,
		];
	});
	return makeSection(
		'Student by student',
		['Code', `Points of ${most}`, 'Answered', 'Omitted', 'Invalid', 'Wrong answers consistent with'],
		rows,
		absent.length === 0 ? [] : [`Without responses: ${absent.join(', ')}.`],
	);
}
