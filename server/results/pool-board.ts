import { leastStudents } from '../../item-bank/analysis/evidence/suppression.ts';
import type { EvidenceSpot, Group, Report, ReportSection } from '../../item-bank/types.ts';
import { type BoardRow, type ClassSets, gatherByStandard, spotOf, tellSpot } from './class-board.ts';
import type { Lens } from './evidence-report.ts';
import { makeSection } from './report-text.ts';

/** What classes are pooled by. */
export type PooledBy = 'grade' | 'teacher';

const notes: Readonly<Record<PooledBy, string>> = {
	grade: 'Classes of a grade together. Grades sat different items: a higher share is not more knowledge.',
	teacher:
		'Classes of one label together, to plan who works on what next. Classes differ in who is in them and in what was taught so far: this is no judgement of a teacher.',
};

/**
 * Points earned by standard in all classes of a grade, or of a teacher's label, together. Shared copies tell a pool only where the
 * class board tells every class in it: so it says nothing of a hidden class that the classes beside it do not. Nothing where fewer
 * than two pools have a label, or where every pool is one class.
 */
export function poolBoardSections(
	by: PooledBy,
	classes: readonly ClassSets[],
	rows: readonly BoardRow[],
	groups: ReadonlyMap<string, Pick<Group, PooledBy>>,
	lens: Lens,
	copy: Report['copy'],
): readonly ReportSection[] {
	const pools = new Map<string, number[]>();
	for (const [place, { group }] of classes.entries()) {
		const label = groups.get(group)?.[by];
		if (label !== undefined) pools.set(label, [...(pools.get(label) ?? []), place]);
	}
	const sorted = [...pools].sort(([a], [b]) => a.localeCompare(b, 'en', { numeric: true }));
	if (sorted.length < 2 || sorted.every(([, places]) => places.length === 1)) return [];
	const evidence = sorted.map(([, places]) =>
		gatherByStandard(
			places.flatMap((place) => classes[place]?.sets ?? []),
			lens,
		),
	);
	const told = rows.map(({ standard, cells }) => ({
		standard,
		cells: sorted.map(([, places], index): EvidenceSpot | null => {
			const cell = evidence[index]?.find((each) => each.standard === standard);
			const isClassHidden = places.some((place) => cells[place] !== null && cells[place]?.share === undefined);
			const isSmall = copy === 'shared' && (cell?.students ?? 0) < leastStudents;
			return spotOf(cell, isClassHidden || isSmall);
		}),
	}));
	const columns = sorted.map(([label]) => (by === 'grade' ? `Grade ${label}` : label));
	return [
		makeSection(
			`Points earned by standard and ${by}`,
			['Standard', ...columns],
			told.map(({ standard, cells }) => [standard, ...cells.map(tellSpot)]),
			[notes[by]],
		),
	];
}
