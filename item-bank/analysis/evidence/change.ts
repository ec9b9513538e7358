import { createRandom } from '../../random/random.ts';
import { type Finding, found, refuse } from '../finding.ts';
import { type Interval, usualConfidence } from '../intervals.ts';
import type { ScoreTable } from '../score-table.ts';
import { addPoints, type CellColumns, type CellName, cellKey, collectCells, type FindPlace } from './cells.ts';
import type { EvidenceOptions } from './evidence.ts';
import { intervalOfStudents } from './resample.ts';

/** How one cell changed between two sittings. */
export interface EvidenceChange extends CellName {
	/** Share of the points at the earlier and the later sitting. */
	readonly before: number;
	readonly after: number;
	/** after − before, −1 to 1. */
	readonly change: number;
	/** Of the change; the same student on both sittings is drawn with both. */
	readonly interval: Finding<Interval>;
	readonly studentsBefore: number;
	readonly studentsAfter: number;
	/** Students with responses on both. */
	readonly studentsBoth: number;
	/** Whether both sittings asked the same items; else a change may lie in the items. */
	readonly isSameItems: boolean;
}

/**
 * Change of every cell that has responses on both sittings, in the order of the cells. The interval treats students as the
 * unit (see intervalOfStudents) and is refused below two students on either sitting. An interval that holds 0 means that
 * the change may be none.
 */
export function compareSittings(
	earlier: readonly ScoreTable[],
	later: readonly ScoreTable[],
	findPlace: FindPlace,
	{ isWanted, seed = 'change', confidence = usualConfidence }: EvidenceOptions = {},
): readonly EvidenceChange[] {
	// Collected together, so that a student has one place on both.
	const { cells, codes } = collectCells([...earlier, ...later], findPlace, isWanted);
	const early = new Set(earlier.flatMap(({ columns }) => columns));
	return cells.flatMap((cell): readonly EvidenceChange[] => {
		const halves = [true, false].map(
			(isEarly): CellColumns => ({
				name: cell.name,
				columns: cell.columns.filter(({ column }) => early.has(column) === isEarly),
			}),
		);
		const [first, second] = halves.map((half) => addPoints(half, codes.length));
		if (first === undefined || second === undefined || first.responses === 0 || second.responses === 0) return [];
		const [before = 0, after = 0] = [first, second].map(({ earned, possible }) => sumOf(earned) / sumOf(possible));
		const both = first.possible.reduce(
			(sum, value, place) => sum + (value > 0 && (second.possible[place] as number) > 0 ? 1 : 0),
			0,
		);
		const fewest = Math.min(first.students, second.students);
		const random = createRandom(`${seed} ${cellKey(cell.name)}`);
		return [
			{
				...cell.name,
				before,
				after,
				change: after - before,
				interval:
					fewest < 2
						? refuse('too-few-students', `expected two or more students on both sittings, found ${fewest}`)
						: found(intervalOfStudents([first, second], random, confidence).interval),
				studentsBefore: first.students,
				studentsAfter: second.students,
				studentsBoth: both,
				isSameItems: listItems(halves[0]) === listItems(halves[1]),
			},
		];
	});
}

function sumOf(values: Float64Array): number {
	return values.reduce((sum, value) => sum + value, 0);
}

function listItems(cell: CellColumns | undefined): string {
	const names = cell?.columns.map(({ column }) => `${column.item.id} ${column.item.version}`) ?? [];
	return [...new Set(names)].sort().join('\n');
}
