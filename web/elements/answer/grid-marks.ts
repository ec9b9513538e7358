import { columnCount, columnSymbols, type GridColumns } from '../../../item-bank/responses/grid.ts';
import type { GridProfile } from '../../../item-bank/types.ts';
import { answerWords } from '../../messages/answer.ts';

/** What a column of the grid can be marked with. */
export type Mark = GridColumns[number][number];

/** What is marked in each column as a sheet would hold it, with empty columns where nothing was answered yet. */
export function columnsOf(profile: GridProfile, marked: GridColumns = []): GridColumns {
	return Array.from({ length: columnCount(profile) }, (_unused, column) => marked[column] ?? []);
}

/** The columns with one of them marked anew; without a mark it is erased. A column holds one mark. */
export function markColumn(columns: GridColumns, column: number, mark: Mark | undefined): GridColumns {
	return columns.map((marks, index) => (index !== column ? marks : mark === undefined ? [] : [mark]));
}

/** What a typed character marks: any minus people type, a plus or a digit; undefined for anything else. */
export function readMark(typed: string): Mark | undefined {
	if (/^[-−–]$/.test(typed)) return '-';
	return /^[+0-9]$/.test(typed) ? (typed as Mark) : undefined;
}

/** The column a mark goes to when it is typed in a column: that one, or the next where the sign column was passed over. */
export function columnFor(profile: GridProfile, column: number, mark: Mark): number | undefined {
	return [column, column + 1].find((candidate) => columnSymbols(profile, candidate).includes(mark));
}

/** A mark as it is printed, with a true minus. */
export function printMark(mark: Mark | undefined): string {
	return mark === '-' ? '−' : (mark ?? '');
}

/** A mark as it is read aloud. */
export function sayMark(mark: Mark | undefined): string {
	if (mark === undefined) return answerWords.blank;
	return mark === '-' ? answerWords.minus : mark === '+' ? answerWords.plus : mark;
}

/** What a column is called. */
export function nameColumn(profile: GridProfile, column: number): string {
	if (profile.signColumn === 'first') {
		return column === 0 ? answerWords.signColumn : answerWords.digitColumn(column, profile.digitColumns);
	}
	return answerWords.column(column + 1, columnCount(profile));
}
