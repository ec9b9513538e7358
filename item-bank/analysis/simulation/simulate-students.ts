import type { PatternId } from '../../patterns/pattern.ts';
import { createRandom, type Random } from '../../random/random.ts';
import type { Item } from '../../types.ts';
import { type ItemPatterns, readItemPatterns } from '../diagnosis/item-patterns.ts';
import { buildScoreTable, type ScoreRow, type ScoreTable, type TableItem } from '../score-table.ts';
import { tableItemOf } from '../table-item.ts';

/** How a simulated student answers. */
export type Habit =
	/** Follows one or more wrong ideas wherever they would show, and is right elsewhere. */
	| { readonly kind: 'follows'; readonly patterns: readonly PatternId[] }
	/** Is right wherever there is no slip. */
	| { readonly kind: 'knows' }
	/** Marks any option, and writes a number of a likely size with a sign by chance. */
	| { readonly kind: 'guesses' };

/** A simulated student. */
export interface SimulatedStudent {
	readonly code: string;
	readonly habit: Habit;
	/** Share of items answered otherwise than the habit says: another option, or a number some steps off or of the other sign. */
	readonly slips: number;
	/** Share of items left out. */
	readonly omits: number;
}

/** An item of a form. */
export interface SimulatedItem {
	readonly id: string;
	readonly item: Item;
}

/**
 * Responses of simulated students to a form, the same for the same seed. It knows only what patterns and slips do to answers;
 * real students are less orderly, so what holds here is the most that can be hoped for there. Items that are neither choices
 * nor answered with a number are right or wrong without an answer.
 */
export function simulateStudents(
	items: readonly SimulatedItem[],
	students: readonly SimulatedStudent[],
	seed: string,
): ScoreTable {
	const form = items.map(({ id, item }) => ({
		tableItem: tableItemOf({ id, version: 1, item }),
		patterns: readItemPatterns(item),
	}));
	const rows = students.flatMap((student) => {
		const random = createRandom(`${seed} ${student.code}`);
		return form.map(({ tableItem, patterns }) => respond(student, tableItem, patterns, random));
	});
	return buildScoreTable(
		form.map(({ tableItem }) => tableItem),
		rows,
		students.map(({ code }) => code),
	).table;
}

function respond(student: SimulatedStudent, item: TableItem, patterns: ItemPatterns, random: Random): ScoreRow {
	const about = { student: student.code, item: item.id };
	const [omits, slips] = [happens(student.omits, random), happens(student.slips, random)];
	if (omits) return { ...about, points: 0, state: 'omitted' };
	const key = item.key?.[0];
	const isNumber = key !== undefined && /^-?[0-9]+$/.test(key) && item.options === undefined;
	if (key === undefined || (item.options === undefined && !isNumber)) {
		const isRight = student.habit.kind === 'guesses' ? happens(0.2, random) : !slips;
		return { ...about, points: isRight ? item.maximum : 0, state: 'answered' };
	}
	const meant = student.habit.kind === 'guesses' ? guess(item, key, random) : meantAnswer(student.habit, key, patterns);
	const answer = slips ? slip(item, meant, random) : meant;
	return { ...about, points: item.key?.includes(answer) ? item.maximum : 0, state: 'answered', answer };
}

function meantAnswer(habit: Exclude<Habit, { kind: 'guesses' }>, key: string, { byAnswer }: ItemPatterns): string {
	if (habit.kind === 'knows') return key;
	for (const pattern of habit.patterns) {
		for (const [answer, behind] of byAnswer) if (behind.includes(pattern)) return answer;
	}
	return key;
}

function guess({ options }: TableItem, key: string, random: Random): string {
	if (options !== undefined) return random.pick(options);
	const reach = Math.max(10, 2 * Math.abs(Number(key)));
	return String(random.nextInteger(-reach, reach));
}

/** Another option; or a number 1 to 3 off, or, as often as one of these, with the other sign. */
function slip({ options }: TableItem, meant: string, random: Random): string {
	if (options !== undefined) return random.pick(options.filter((option) => option !== meant));
	const number = Number(meant);
	const steps = random.pick([-3, -2, -1, 1, 2, 3, 0]);
	return String(steps === 0 && number !== 0 ? -number : number + (steps || 1));
}

function happens(share: number, random: Random): boolean {
	return random.nextInteger(1, 1_000_000) <= share * 1_000_000;
}
