import { type Finding, found, refuse } from './finding.ts';
import { type Moments, momentsOf } from './moments.ts';
import { type ScoreTable, stateCodes } from './score-table.ts';
import { totalsOf } from './select-students.ts';

/** Total scores, ready for figures that relate items to them. */
export interface Totals {
	/** Points of each student over all items. */
	readonly totals: Float64Array;
	readonly moments: Moments;
}

/**
 * Total scores of a complete table. Refuses fewer than two items or students, students without points on some item
 * (see keepComplete), and totals that are all the same.
 */
export function findTotals(table: ScoreTable): Finding<Totals> {
	const { students, columns } = table;
	if (columns.length < 2) return refuse('too-few-items', `expected two or more items, found ${columns.length}`);
	if (students.length < 2) return refuse('too-few-students', `expected two or more students, found ${students.length}`);
	const gaps = countGaps(table);
	if (gaps > 0) {
		return refuse('incomplete', `expected points for every response, found ${gaps} responses not given or not rated`);
	}
	const totals = totalsOf(table);
	const moments = momentsOf(totals);
	if (moments.variance === 0) {
		return refuse('no-variance', `expected different total scores, found ${totals[0]} points for every student`);
	}
	return found({ totals, moments });
}

function countGaps({ columns }: ScoreTable): number {
	let gaps = 0;
	for (const { states } of columns) {
		for (let place = 0; place < states.length; place += 1)
			if ((states[place] as number) >= stateCodes.unrated) gaps += 1;
	}
	return gaps;
}
