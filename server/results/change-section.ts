import { compareSittings, type EvidenceChange } from '../../item-bank/analysis/evidence/change.ts';
import { leastStudents } from '../../item-bank/analysis/evidence/suppression.ts';
import { readChange } from '../../item-bank/analysis/readings/evidence-readings.ts';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { findStandards, type Lens } from './evidence-report.ts';
import { intervalText, makeSection, percent, type ReportCell } from './report-text.ts';
import { buildResultTable, type ResultSet } from './result-set.ts';

/** Change by standard from every group's sitting before the last to its last; nothing where no group sat twice. */
export function changeSections(sets: readonly ResultSet[], lens: Lens, copy: Report['copy']): readonly ReportSection[] {
	const pairs = pairSittings(sets);
	if (pairs.length === 0) return [];
	const [earlier, later] = [pairs.map(([first]) => first), pairs.map(([, second]) => second)];
	const [before, now] = [earlier.map((set) => buildResultTable([set])), later.map((set) => buildResultTable([set]))];
	const find = findStandards([...before, ...now], lens);
	const changes = compareSittings(
		before.map(({ table }) => table),
		now.map(({ table }) => table),
		(item) => {
			const place = find(item);
			return place && { standard: place.standard, model: 'all' };
		},
	);
	const rows = changes.map((change): readonly ReportCell[] => [change.standard, ...tellChange(change, copy)]);
	const from = earlier.map(({ entry }) => entry.sitting.date).sort();
	const to = later.map(({ entry }) => entry.sitting.date).sort();
	return [
		makeSection(
			'Change since the sitting before',
			['Standard', 'Before', 'Students', 'After', 'Students', 'Change', '95 % interval', 'In words'],
			rows,
			[
				`${pairs.length} ${pairs.length === 1 ? 'group' : 'groups'} with two sittings or more: the last (${from[0]} to ${from.at(-1)} before it, ${to[0]} to ${to.at(-1)} now). Where other items were asked, a change may lie in the items.`,
			],
		),
	];
}

function tellChange(change: EvidenceChange, copy: Report['copy']): readonly ReportCell[] {
	const { before, after, interval, studentsBefore, studentsAfter } = change;
	if (copy === 'shared' && Math.min(studentsBefore, studentsAfter) < leastStudents) {
		return ['hidden', null, 'hidden', null, null, null, `Hidden: fewer than ${leastStudents} students.`];
	}
	return [
		percent(before),
		studentsBefore,
		percent(after),
		studentsAfter,
		`${change.change < 0 ? 'down' : 'up'} ${percent(Math.abs(change.change))}`,
		intervalText(interval),
		readChange(change).text,
	];
}

/** Every group's last two sittings, earlier first. */
function pairSittings(sets: readonly ResultSet[]): readonly (readonly [ResultSet, ResultSet])[] {
	const byGroup = new Map<string, ResultSet[]>();
	for (const set of [...sets].sort((a, b) => (a.entry.sitting.date < b.entry.sitting.date ? -1 : 1))) {
		const { group } = set.entry.sitting;
		byGroup.set(group, [...(byGroup.get(group) ?? []), set]);
	}
	return [...byGroup.values()].flatMap((list) => {
		const [earlier, later] = list.slice(-2);
		return earlier === undefined || later === undefined || earlier.entry.sitting.date === later.entry.sitting.date
			? []
			: [[earlier, later] as const];
	});
}
