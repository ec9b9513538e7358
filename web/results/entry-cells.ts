import type { AnswerEntry, SittingAnswers, SittingPlace, StudentAnswer } from '../../item-bank/types.ts';

/** What stands in a cell for what is no response. */
export const markTexts = { omitted: '/', 'not-reached': '//', invalid: '?' } as const;

type Mark = keyof typeof markTexts;

/** A cell of the class grid: a student and a place. */
export interface CellPlace {
	readonly code: string;
	readonly label: string;
}

/** The name of a cell in storage and among changes. */
export function cellKey({ code, label }: CellPlace): string {
	return `${code} ${label}`;
}

/** The text of an answer as a cell shows it: marks by their signs, letters as capitals. */
export function cellText(answer: StudentAnswer, kind: string): string {
	const { given, raw } = answer;
	if (given.kind === 'mark') return markTexts[given.mark];
	return hasLetters(kind) ? raw.toUpperCase() : raw;
}

/** Texts of all cells that hold an answer. */
export function listCells({ places, students }: SittingAnswers): ReadonlyMap<string, string> {
	const byPlace = new Map(places.map((place) => [placeKey(place), place]));
	const cells = new Map<string, string>();
	for (const { code, answers } of students) {
		for (const answer of answers) {
			const place = byPlace.get(placeKey(answer));
			if (place) cells.set(cellKey({ code, label: place.label }), cellText(answer, place.kind));
		}
	}
	return cells;
}

/** What a typed text asks the bank to keep; an emptied cell is an omission. */
export function entryOf({ position, part }: SittingPlace, typed: string): AnswerEntry {
	const text = typed.trim();
	const place = { position, ...(part === undefined ? {} : { part }) };
	const mark = (Object.keys(markTexts) as Mark[]).find((each) => markTexts[each] === text);
	if (mark !== undefined || text === '') return { ...place, given: { kind: 'mark', mark: mark ?? 'omitted' } };
	return { ...place, text };
}

/** Whether one key is a whole answer, so that the cursor can move on by itself. */
export function isOneKey(kind: string): boolean {
	return kind === 'choice' || kind === 'inline-choice';
}

/** Rows of cells of a text copied from a spreadsheet. */
export function readBlock(text: string): readonly (readonly string[])[] {
	const lines = text.replace(/\r\n?/g, '\n').replace(/\n$/, '').split('\n');
	return lines.map((line) => line.split('\t').map((cell) => cell.trim()));
}

function hasLetters(kind: string): boolean {
	return kind !== 'gridded' && kind !== 'explanation' && kind !== 'point';
}

function placeKey({ position, part }: { readonly position: number; readonly part?: number }): string {
	return `${position}.${part ?? ''}`;
}
