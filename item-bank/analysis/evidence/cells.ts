import type { PatternId } from '../../patterns/pattern.ts';
import type { ModelType } from '../../types.ts';
import type { ItemColumn, ScoreTable, TableItem } from '../score-table.ts';
import { hasPoints } from '../select-students.ts';

/** Where an item counts: under its lead standard in some framework, in its model type. */
export interface EvidencePlace {
	readonly standard: string;
	readonly model: ModelType;
	/** Error patterns that would show in an answer; the item counts once under each, beside its cell. */
	readonly patterns?: readonly PatternId[];
}

/** Finds where an item counts; undefined for an item that does not. */
export type FindPlace = (item: TableItem) => EvidencePlace | undefined;

/** What tells one cell from another; without a pattern it is a cell of the board. */
export interface CellName {
	readonly standard: string;
	readonly model: ModelType;
	readonly pattern?: PatternId;
}

/** Columns of one cell, each with the places of its students among all. */
export interface CellColumns {
	readonly name: CellName;
	readonly columns: readonly { readonly column: ItemColumn; readonly places: Int32Array }[];
}

/** Points of one cell, student by student. */
export interface CellPoints {
	readonly earned: Float64Array;
	readonly possible: Float64Array;
	readonly responses: number;
	/** Students with at least one response. */
	readonly students: number;
	/** Different items. */
	readonly items: number;
	readonly isRightOrWrong: boolean;
}

/**
 * Collects the columns of all tables cell by cell, cells sorted by standard, model and pattern. Students are told apart by
 * code over all tables; places name them in `codes`.
 */
export function collectCells(
	tables: readonly ScoreTable[],
	findPlace: FindPlace,
	isWanted: (student: string) => boolean = () => true,
): { readonly cells: readonly CellColumns[]; readonly codes: readonly string[] } {
	const placesByCode = new Map<string, number>();
	interface Growing {
		readonly name: CellName;
		readonly columns: { readonly column: ItemColumn; readonly places: Int32Array }[];
	}
	const cells = new Map<string, Growing>();
	for (const { students, columns } of tables) {
		const places = Int32Array.from(students, (code) => {
			if (!isWanted(code)) return -1;
			const place = placesByCode.get(code) ?? placesByCode.size;
			placesByCode.set(code, place);
			return place;
		});
		for (const column of columns) {
			const at = findPlace(column.item);
			if (at === undefined) continue;
			const { standard, model, patterns = [] } = at;
			for (const name of [{ standard, model }, ...patterns.map((pattern) => ({ standard, model, pattern }))]) {
				const key = cellKey(name);
				const cell: Growing = cells.get(key) ?? { name, columns: [] };
				cells.set(key, cell);
				cell.columns.push({ column, places });
			}
		}
	}
	const sorted = [...cells].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, cell]) => cell);
	return { cells: sorted, codes: [...placesByCode.keys()] };
}

/** A cell's name as one text, equal for equal names. */
export function cellKey({ standard, model, pattern }: CellName): string {
	return `${standard}\n${model}\n${pattern ?? ''}`;
}

/** Adds up the points of one cell for each of `count` students. Responses without points count nowhere. */
export function addPoints({ columns }: CellColumns, count: number): CellPoints {
	const earned = new Float64Array(count);
	const possible = new Float64Array(count);
	let responses = 0;
	let isRightOrWrong = true;
	const items = new Set<string>();
	for (const { column, places } of columns) {
		const { points, states, item } = column;
		for (let student = 0; student < points.length; student += 1) {
			const place = places[student] as number;
			if (place < 0 || !hasPoints(states[student])) continue;
			const got = points[student] as number;
			responses += 1;
			items.add(item.id);
			earned[place] = (earned[place] as number) + got;
			possible[place] = (possible[place] as number) + item.maximum;
			if (got !== 0 && got !== item.maximum) isRightOrWrong = false;
		}
	}
	const students = possible.reduce((sum, value) => sum + (value > 0 ? 1 : 0), 0);
	return { earned, possible, responses, students, items: items.size, isRightOrWrong };
}
