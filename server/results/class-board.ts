import { diagnoseClass } from '../../item-bank/analysis/diagnosis/class.ts';
import type { StudentDiagnosis } from '../../item-bank/analysis/diagnosis/student.ts';
import { type EvidenceCell, gatherEvidence } from '../../item-bank/analysis/evidence/evidence.ts';
import { leastStudents } from '../../item-bank/analysis/evidence/suppression.ts';
import { foundValue } from '../../item-bank/analysis/finding.ts';
import { getPattern } from '../../item-bank/patterns/index.ts';
import type { PatternId } from '../../item-bank/patterns/pattern.ts';
import type { Evidence, EvidenceSpot, Report, ReportSection } from '../../item-bank/types.ts';
import { findStandards, type Lens } from './evidence-report.ts';
import { hideInRow } from './hide-in-row.ts';
import { diagnoseTable } from './pattern-sections.ts';
import { intervalText, leastShared, makeSection, percent, type ReportCell } from './report-text.ts';
import { buildResultTable, type ResultSet } from './result-set.ts';

/** Class columns that a page and a plot have room for. */
const mostColumns = 7;

/** A class group with all its sittings. */
export interface ClassSets {
	/** Id of the group. */
	readonly group: string;
	readonly name: string;
	readonly sets: readonly ResultSet[];
}

/** A standard with what every class, or pool of classes, earned on it; null where nothing was asked. */
export interface BoardRow {
	readonly standard: string;
	readonly cells: readonly (EvidenceSpot | null)[];
}

/** Points earned in sittings by standard, all models together. */
export function gatherByStandard(sets: readonly ResultSet[], lens: Lens): readonly EvidenceCell[] {
	const tables = sets.map((set) => buildResultTable([set]));
	const find = findStandards(tables, lens);
	return gatherEvidence(
		tables.map(({ table }) => table),
		(item) => {
			const place = find(item);
			return place && { standard: place.standard, model: 'all' };
		},
	);
}

/**
 * Points earned by standard in every class. In a shared copy small cells are hidden, and others with them so that the totals of
 * the board do not give them away; a row whose total the board hides is hidden whole. Nothing for a single class.
 */
export function classBoardSections(
	sets: readonly ResultSet[],
	groupNames: ReadonlyMap<string, string>,
	{ cells: board }: Pick<Evidence, 'cells'>,
	lens: Lens,
	copy: Report['copy'],
	pool: (classes: readonly ClassSets[], rows: readonly BoardRow[]) => readonly ReportSection[] = () => [],
): readonly ReportSection[] {
	const classes = gatherClasses(sets, groupNames);
	if (classes.length < 2) return [];
	const rows = rowsOfClasses(classes, board, lens, copy);
	const columns = classes.map(({ name }) => name);
	const { headings, lines } = layOut(
		'Standard',
		columns,
		rows.map(({ standard, cells }) => [standard, ...cells.map(tellSpot)]),
	);
	return [
		makeSection(
			'Points earned by standard and class',
			headings,
			lines,
			[
				'Classes differ in who is in them, in what was taught so far and, where they sat different forms, in the items: this is no comparison of teachers.',
			],
			columns.length > mostColumns
				? undefined
				: {
						kind: 'evidence-board',
						columns,
						rows: rows.map(({ standard, cells }) => ({ label: standard, cells })),
					},
		),
		...pool(classes, rows),
	];
}

/** Every standard with the classes side by side: see {@link classBoardSections}. */
function rowsOfClasses(
	classes: readonly ClassSets[],
	board: Evidence['cells'],
	lens: Lens,
	copy: Report['copy'],
): readonly BoardRow[] {
	const evidence = classes.map(({ sets }) => gatherByStandard(sets, lens));
	const standards = [...new Set(board.flatMap(({ standard }) => standard ?? []))].sort();
	return standards.map((standard) => {
		const cells = evidence.map((list) => list.find((cell) => cell.standard === standard));
		const isTotalHidden = board.some(
			(cell) => cell.standard === standard && cell.model === undefined && cell.hidden !== undefined,
		);
		const hidden =
			copy === 'own'
				? new Set()
				: hideInRow(
						cells.map((cell) => cell?.students ?? 0),
						leastStudents,
					);
		return { standard, cells: cells.map((cell, place) => spotOf(cell, isTotalHidden || hidden.has(place))) };
	});
}

/** A table with a column a class, or with a row a class where there are many. */
function layOut(
	heading: string,
	classes: readonly string[],
	rows: readonly (readonly ReportCell[])[],
): { readonly headings: readonly string[]; readonly lines: readonly (readonly ReportCell[])[] } {
	if (classes.length <= mostColumns) return { headings: [heading, ...classes], lines: rows };
	return {
		headings: ['Class', ...rows.map(([name]) => String(name ?? ''))],
		lines: classes.map((name, place) => [name, ...rows.map((row) => row[place + 1] ?? null)]),
	};
}

/** What is told of a cell. */
export function spotOf(cell: EvidenceCell | undefined, isHidden: boolean): EvidenceSpot | null {
	if (cell === undefined) return null;
	if (isHidden) return { items: cell.items };
	const { items, share, students } = cell;
	const interval = foundValue(cell.interval);
	return { items, share, students, ...(interval === undefined ? {} : { low: interval.low, high: interval.high }) };
}

/** A cell as a table says it; null where nothing was asked. */
export function tellSpot(spot: EvidenceSpot | null): string | null {
	if (spot === null) return null;
	const { share, low, high, students } = spot;
	if (share === undefined) return 'hidden';
	const span = low === undefined || high === undefined ? '' : ` (${intervalText({ low, high })})`;
	return `${percent(share)}${span}, n ${students ?? 0}`;
}

/** A wrong idea with the students of every class whose answers repeat it; undefined where that is not told. */
export interface ClassCounts {
	readonly pattern: PatternId;
	readonly counts: readonly (number | undefined)[];
}

/** Classes that sat one form, and the wrong ideas their answers repeat, most frequent first. */
export interface ClassPatterns {
	readonly classes: readonly { readonly name: string; readonly students: number }[];
	readonly patterns: readonly ClassCounts[];
}

/**
 * In how many students of every class answers repeat a wrong idea, for classes that sat one form. In a shared copy counts of one
 * or two and those of small classes are not told, nor others that would give them away with the count over all classes.
 */
export function countByClass(
	sets: readonly ResultSet[],
	groupNames: ReadonlyMap<string, string>,
	copy: Report['copy'],
): ClassPatterns {
	const classes = gatherClasses(sets, groupNames).map(({ name, sets: own }) => {
		const diagnoses = diagnoseTable(buildResultTable(own)).filter(({ answered }) => answered > 0);
		return { name, students: diagnoses.length, repeated: countRepeated(diagnoses) };
	});
	const ids = [...new Set(classes.flatMap(({ repeated }) => [...repeated.keys()]))];
	const patterns = ids
		.map((pattern) => {
			const counts = classes.map(({ repeated }) => repeated.get(pattern) ?? 0);
			return { pattern, counts, total: counts.reduce((sum, each) => sum + each, 0) };
		})
		.filter(({ total }) => total >= (copy === 'own' ? 1 : leastShared))
		.sort((a, b) => b.total - a.total)
		.map(({ pattern, counts }) => {
			const hidden = copy === 'own' ? new Set<number>() : hideCounts(counts, classes);
			return { pattern, counts: counts.map((count, place) => (hidden.has(place) ? undefined : count)) };
		});
	return { classes, patterns };
}

/** Counts that are not told: see {@link countByClass}. Where a small class cannot hide behind another, nothing of the row is told. */
function hideCounts(counts: readonly number[], classes: readonly { readonly students: number }[]): ReadonlySet<number> {
	const isSmall = (place: number): boolean => (classes[place]?.students ?? 0) < leastStudents;
	const hidden = new Set(
		[...counts.keys()].filter((place) => isSmall(place) || hideInRow(counts, leastShared).has(place)),
	);
	const behind = [...hidden].filter((place) => !isSmall(place) && (counts[place] ?? 0) > 0);
	if (behind.length > 0 || ![...hidden].some(isSmall)) return hidden;
	const next = [...counts.keys()].filter((place) => !hidden.has(place) && (counts[place] ?? 0) > 0);
	next.sort((a, b) => (counts[a] ?? 0) - (counts[b] ?? 0));
	return next[0] === undefined ? new Set(counts.keys()) : hidden.add(next[0]);
}

/** {@link countByClass} as a table; nothing for one class. */
export function classPatternSections(
	{ classes, patterns }: ClassPatterns,
	title: string,
	copy: Report['copy'],
): readonly ReportSection[] {
	if (classes.length < 2 || patterns.length === 0) return [];
	const rows = patterns.map(({ pattern, counts }): readonly ReportCell[] => [
		getPattern(pattern).name,
		...counts.map((count, place) => (count === undefined ? 'hidden' : `${count} of ${classes[place]?.students ?? 0}`)),
	]);
	const { headings, lines } = layOut(
		'Answers consistent with',
		classes.map(({ name }) => name),
		rows,
	);
	const hiding = ` Counts under ${leastShared} are hidden, with others that would give them away.`;
	return [
		makeSection(`Wrong ideas by class: ${title}`, headings, lines, [
			`Students whose answers repeat the idea. Among so few, one or two more or fewer is no difference between classes.${copy === 'own' ? '' : hiding}`,
		]),
	];
}

function countRepeated(diagnoses: readonly StudentDiagnosis[]): ReadonlyMap<PatternId, number> {
	const shares = foundValue(diagnoseClass(diagnoses))?.shares ?? [];
	return new Map(shares.flatMap(({ pattern, repeated }) => (repeated > 0 ? [[pattern, repeated] as const] : [])));
}

function gatherClasses(sets: readonly ResultSet[], groupNames: ReadonlyMap<string, string>): readonly ClassSets[] {
	const groups = new Map<string, ResultSet[]>();
	for (const set of sets) {
		const { group } = set.entry.sitting;
		groups.set(group, [...(groups.get(group) ?? []), set]);
	}
	return [...groups]
		.map(([group, own]) => ({ group, name: groupNames.get(group) ?? group, sets: own }))
		.sort((a, b) => (a.name < b.name ? -1 : 1));
}
