import { type Finding, found, refuse } from './finding.ts';
import { type Interval, wilsonInterval } from './intervals.ts';
import { type ItemColumn, type ScoreTable, stateCodes } from './score-table.ts';

/** A number of responses and their share of all that were given the item, with Wilson's interval. */
export interface CountedShare {
	readonly count: number;
	readonly share: number;
	readonly interval: Interval;
}

/** How responses to one item stand. */
export interface OmitRates {
	/** Students who were given the item. */
	readonly given: number;
	readonly answered: CountedShare;
	readonly omitted: CountedShare;
	readonly notReached: CountedShare;
	/** Such as two marks in one column: no points, and no wrong answer either. */
	readonly invalid: CountedShare;
	/** Waiting for a scorer. */
	readonly unrated: CountedShare;
}

/**
 * Rates of omitted, not reached and invalid responses to one item: counts over students who were given it, 0 to 1. Kept
 * apart from wrong answers (state reports do so for gridded items; see reference/trade.md, section 3). Refuses an item that
 * nobody was given.
 */
export function measureOmitRates({ item, states }: ItemColumn): Finding<OmitRates> {
	const counts = new Float64Array(6);
	for (let place = 0; place < states.length; place += 1) {
		const state = states[place] as number;
		counts[state] = (counts[state] as number) + 1;
	}
	const given = states.length - (counts[stateCodes['not-given']] as number);
	if (given === 0) return refuse('too-few-students', `expected responses to item "${item.id}", found none`);
	const share = (code: number): CountedShare => {
		const count = counts[code] as number;
		return { count, share: count / given, interval: wilsonInterval(count, given) };
	};
	return found({
		given,
		answered: share(stateCodes.answered),
		omitted: share(stateCodes.omitted),
		notReached: share(stateCodes['not-reached']),
		invalid: share(stateCodes.invalid),
		unrated: share(stateCodes.unrated),
	});
}

/**
 * Tells omitted from not reached: of the omitted responses at the end of a student's form, after the last that is
 * anything else, the first stays omitted (the student looked at it) and the rest become not reached (common practice in
 * national surveys, from memory). Students who left out everything are taken not to have reached anything.
 */
export function markNotReached(table: ScoreTable): ScoreTable {
	const columns = table.columns.map((column) => ({ ...column, states: column.states.slice() }));
	for (let place = 0; place < table.students.length; place += 1) {
		const given = columns.filter(({ states }) => states[place] !== stateCodes['not-given']);
		const open = given.findLastIndex(({ states }) => {
			const state = states[place];
			return state !== stateCodes.omitted && state !== stateCodes['not-reached'];
		});
		for (const { states } of given.slice(open < 0 ? 0 : open + 2)) states[place] = stateCodes['not-reached'];
	}
	return { students: table.students, columns };
}
