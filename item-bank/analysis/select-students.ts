import { type ItemColumn, type ScoreTable, stateCodes } from './score-table.ts';

/** The students at the places given, in that order, with all items. */
export function selectStudents(table: ScoreTable, places: ArrayLike<number>): ScoreTable {
	const students = Array.from(places, (place) => table.students[place] ?? '');
	const columns = table.columns.map((column): ItemColumn => {
		const points = new Float64Array(places.length);
		const states = new Uint8Array(places.length);
		const answers = new Int32Array(places.length);
		for (let index = 0; index < places.length; index += 1) {
			const place = places[index] as number;
			points[index] = column.points[place] as number;
			states[index] = column.states[place] as number;
			answers[index] = column.answers[place] as number;
		}
		return { ...column, points, states, answers };
	});
	return { students, columns };
}

/** The items at the places given, in that order, with all students; columns are shared and not copied. */
export function selectItems(table: ScoreTable, places: readonly number[]): ScoreTable {
	return { students: table.students, columns: places.flatMap((place) => table.columns[place] ?? []) };
}

/** Whether a response has points: every state but "unrated" and "not-given". */
export function hasPoints(state: number | undefined): boolean {
	return state !== undefined && state < stateCodes.unrated;
}

/** Whether every response of a column earned all points or none, among those with points. */
export function isRightOrWrong({ item, points }: ItemColumn): boolean {
	for (let place = 0; place < points.length; place += 1) {
		const earned = points[place];
		if (earned !== 0 && earned !== item.maximum) return false;
	}
	return true;
}

/** A table of the students who have points on every item, and how many were left out. */
export interface CompleteTable {
	readonly table: ScoreTable;
	readonly leftOut: number;
}

/**
 * Leaves out students with a response that was not given or waits for a rating (listwise), which every figure made of
 * total scores needs. Omitted, not reached and invalid responses stay and count 0 points.
 */
export function keepComplete(table: ScoreTable): CompleteTable {
	const isComplete = new Uint8Array(table.students.length).fill(1);
	for (const { states } of table.columns) {
		for (let place = 0; place < states.length; place += 1) if (!hasPoints(states[place])) isComplete[place] = 0;
	}
	const places = [...isComplete.keys()].filter((place) => isComplete[place] === 1);
	const leftOut = table.students.length - places.length;
	return leftOut === 0 ? { table, leftOut } : { table: selectStudents(table, places), leftOut };
}

/** Total points of each student; responses without points add nothing. */
export function totalsOf(table: ScoreTable): Float64Array {
	const totals = new Float64Array(table.students.length);
	for (const { points } of table.columns) {
		for (let place = 0; place < totals.length; place += 1)
			totals[place] = (totals[place] as number) + (points[place] as number);
	}
	return totals;
}
