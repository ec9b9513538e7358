import { invariant } from '../invariant.ts';

/**
 * How a student stands with an item. "unrated" (waits for a scorer) and "not-given" (not on the student's form) have no
 * points; all others do, 0 for omitted, not reached and invalid.
 */
export type ResponseState = 'answered' | 'omitted' | 'not-reached' | 'invalid' | 'unrated' | 'not-given';

/** The states in the order of their codes in a column. */
export const responseStates: readonly ResponseState[] = [
	'answered',
	'omitted',
	'not-reached',
	'invalid',
	'unrated',
	'not-given',
];

/** Codes of states in a column, by name. */
export const stateCodes: Readonly<Record<ResponseState, number>> = {
	answered: 0,
	omitted: 1,
	'not-reached': 2,
	invalid: 3,
	unrated: 4,
	'not-given': 5,
};

/** An item as the statistics see it. */
export interface TableItem {
	readonly id: string;
	readonly version: number;
	/** Points possible, above 0. */
	readonly maximum: number;
	/** What is right, spelled like answers are: option ids, or a number such as "-5". */
	readonly key?: readonly string[];
	/** Option ids in the order shown, for items answered by marking one option. */
	readonly options?: readonly string[];
}

/** One item's responses, one entry a student, in the order of the students. */
export interface ItemColumn {
	readonly item: TableItem;
	/** Points earned; 0 where the state has none. */
	readonly points: Float64Array;
	/** Codes of {@link stateCodes}. */
	readonly states: Uint8Array;
	/** Index into distinctAnswers, −1 where no answer was kept. */
	readonly answers: Int32Array;
	/** The item's distinct answers as first met: an option id, a number in decimal, or any other text. */
	readonly distinctAnswers: readonly string[];
}

/** Students × items, column by column: 13 bytes a response, so 25,000 students × 40 items take 13 MB. */
export interface ScoreTable {
	/** Student codes, all different. */
	readonly students: readonly string[];
	/** In form order. */
	readonly columns: readonly ItemColumn[];
}

/** One response in the long form. A student without a row for an item was not given it. */
export interface ScoreRow {
	readonly student: string;
	/** Id of the item. */
	readonly item: string;
	/** 0 to the item's maximum; 0 unless answered. */
	readonly points: number;
	readonly state: ResponseState;
	/** The raw answer: an option id, a number in decimal with a hyphen-minus, or any other text that stands for it. */
	readonly answer?: string;
}

/** What is wrong with a row, which was left out. */
export interface RowFault {
	/** Place of the row, 0 for the first. */
	readonly row: number;
	readonly fault: 'item-unknown' | 'row-repeated' | 'points-refused';
	/** What was expected and what was found. */
	readonly message: string;
}

/** A table, and the rows that could not be put into it. */
export interface BuiltTable {
	readonly table: ScoreTable;
	readonly faults: readonly RowFault[];
}

/**
 * Builds a table from items in form order and rows in any order; students stand in the order given, or as first met.
 * Rows that name an unknown item, repeat a cell, or carry points that the item or the state does not allow are left out
 * and listed. Items are told apart by id, which must not repeat.
 */
export function buildScoreTable(
	items: readonly TableItem[],
	rows: Iterable<ScoreRow>,
	students: readonly string[] = [],
): BuiltTable {
	const places = new Map(items.map((item, place) => [item.id, place]));
	invariant(places.size === items.length, 'items of a score table repeat an id');
	const growing = items.map((item) => growColumn(item, students.length));
	const studentPlaces = new Map(students.map((student, place) => [student, place]));
	invariant(studentPlaces.size === students.length, 'students of a score table repeat a code');
	const faults: RowFault[] = [];
	let index = -1;
	for (const row of rows) {
		index += 1;
		const column = growing[places.get(row.item) ?? -1];
		if (column === undefined) {
			faults.push({
				row: index,
				fault: 'item-unknown',
				message: `expected an item of the table, found "${row.item}" for student "${row.student}"`,
			});
			continue;
		}
		const refused = refusePoints(row, column.item);
		if (refused !== undefined) {
			faults.push({ row: index, fault: 'points-refused', message: refused });
			continue;
		}
		const place = studentPlaces.get(row.student) ?? studentPlaces.size;
		if (place === studentPlaces.size) studentPlaces.set(row.student, place);
		if (!column.put(place, row)) {
			faults.push({
				row: index,
				fault: 'row-repeated',
				message: `expected one response of student "${row.student}" to "${row.item}", found another; the first was kept`,
			});
		}
	}
	const codes = [...studentPlaces.keys()];
	return { table: { students: codes, columns: growing.map(({ close }) => close(codes.length)) }, faults };
}

function refusePoints({ student, item, points, state }: ScoreRow, { maximum }: TableItem): string | undefined {
	const most = state === 'answered' ? maximum : 0;
	if (points >= 0 && points <= most) return undefined;
	return `expected 0 to ${most} points for the ${state} response of student "${student}" to "${item}", found ${points}`;
}

interface GrowingColumn {
	readonly item: TableItem;
	/** False where the cell was filled before. */
	readonly put: (place: number, row: ScoreRow) => boolean;
	readonly close: (students: number) => ItemColumn;
}

function growColumn(item: TableItem, expected: number): GrowingColumn {
	let size = Math.max(16, expected);
	let points = new Float64Array(size);
	let states = new Uint8Array(size).fill(stateCodes['not-given']);
	let answers = new Int32Array(size).fill(-1);
	const indices = new Map<string, number>();
	const grow = (least: number): void => {
		size = Math.max(least, size * 2);
		const [oldPoints, oldStates, oldAnswers] = [points, states, answers];
		points = new Float64Array(size);
		states = new Uint8Array(size).fill(stateCodes['not-given']);
		answers = new Int32Array(size).fill(-1);
		points.set(oldPoints);
		states.set(oldStates);
		answers.set(oldAnswers);
	};
	const put = (place: number, row: ScoreRow): boolean => {
		if (place >= size) grow(place + 1);
		// A row that says "not given" leaves the cell as it is, and a second row after it is no repetition.
		if (states[place] !== stateCodes['not-given']) return false;
		points[place] = row.points;
		states[place] = stateCodes[row.state];
		if (row.answer !== undefined) {
			const known = indices.get(row.answer) ?? indices.size;
			if (known === indices.size) indices.set(row.answer, known);
			answers[place] = known;
		}
		return true;
	};
	const close = (students: number): ItemColumn => {
		if (students > size) grow(students);
		return {
			item,
			points: points.slice(0, students),
			states: states.slice(0, students),
			answers: answers.slice(0, students),
			distinctAnswers: [...indices.keys()],
		};
	};
	return { item, put, close };
}
