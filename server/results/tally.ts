import type { RejectedRow } from '../../item-bank/types.ts';
import type { AnswerCell } from './answer-cell.ts';

/** Counts what happens to the rows of a file. */
export interface Tally {
	readonly rejected: readonly RejectedRow[];
	readonly absent: readonly string[];
	readonly rows: number;
	readonly passedOver: number;
	/** Taken answers by state. */
	readonly states: Readonly<Record<string, number>>;
	/** Sentences on what a person should look at. */
	readonly notes: () => readonly string[];
	readonly countRow: () => void;
	readonly reject: (row: RejectedRow) => undefined;
	readonly passOver: () => void;
	readonly noteAbsent: (code: string) => void;
	readonly take: (line: number, answers: readonly AnswerCell[]) => void;
	/** Takes back what was counted of a row that could not be kept after all. */
	readonly untake: (answers: readonly Pick<AnswerCell, 'score'>[]) => void;
}

/** A tally of nothing yet. onReject is told of every rejected row at once. */
export function createTally(onReject?: (row: RejectedRow) => void): Tally {
	const rejected: RejectedRow[] = [];
	const absent: string[] = [];
	const states: Record<string, number> = {};
	let [rows, passedOver, noNumbers] = [0, 0, 0];
	let firstNoNumber = '';
	return {
		rejected,
		absent,
		states,
		get rows() {
			return rows;
		},
		get passedOver() {
			return passedOver;
		},
		countRow: () => {
			rows += 1;
		},
		reject: (row) => {
			rejected.push(row);
			onReject?.(row);
			return undefined;
		},
		passOver: () => {
			passedOver += 1;
		},
		noteAbsent: (code) => void absent.push(code),
		take: (line, answers) => {
			for (const { score, note, raw } of answers) {
				states[score.state] = (states[score.state] ?? 0) + 1;
				if (note === undefined) continue;
				if (noNumbers === 0) firstNoNumber = `"${raw.slice(0, 40)}" on line ${line}`;
				noNumbers += 1;
			}
		},
		untake: (answers) => {
			for (const { score } of answers) states[score.state] = (states[score.state] ?? 0) - 1;
		},
		notes: () => [
			...(noNumbers === 0
				? []
				: [
						`${noNumbers} ${noNumbers === 1 ? 'entry is' : 'entries are'} no whole number, such as ${firstNoNumber}: scored as invalid.`,
					]),
			...(passedOver === 0
				? []
				: [
						`${passedOver} ${passedOver === 1 ? 'row was' : 'rows were'} passed over: another row of the same was taken.`,
					]),
		],
	};
}
