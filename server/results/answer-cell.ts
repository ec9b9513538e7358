import { type AnswerPlace, scoreAnswer } from '../../item-bank/forms/answer-places.ts';
import type { AnswerGiven, AnswerScore, PartItem, ResponseMapping } from '../../item-bank/types.ts';
import { emptyResponse, isWholeNumber, readAnswerText } from './answer-text.ts';
import { describeCellFault, quoteCell, readCell, trimCell } from './cell-text.ts';
import type { Holds } from './columns.ts';
import type { NamedPlace } from './place-names.ts';

/** What one cell said, and what it earned. */
export interface AnswerCell {
	/** As it came in. */
	readonly raw: string;
	readonly given: AnswerGiven;
	readonly score: AnswerScore;
	/** Nothing stood in the cell. */
	readonly isBlank: boolean;
	/** Something a person should look at, though it was taken. */
	readonly note?: 'no-whole-number';
}

/** A cell, or why it cannot be taken. */
export type CellFinding = AnswerCell | { readonly code: string; readonly message: string };

/** Reads cells of one column or place; every distinct text is read and scored once. */
export type CellReader = (cell: string) => CellFinding;

/** Distinct texts kept for a place: free answers would otherwise fill the memory. */
const mostKept = 5000;

/** A reader of the cells of a place. */
export function createCellReader(named: NamedPlace, holds: Holds, mapping: ResponseMapping): CellReader {
	const marks = listMarks(mapping);
	const kept = new Map<string, CellFinding>();
	return (cell) => {
		const known = kept.get(cell);
		if (known) return known;
		const finding = readAnswerCell(cell, named, holds, mapping, marks);
		if (kept.size < mostKept && cell.length < 200) kept.set(cell, finding);
		return finding;
	};
}

/** A cell that stands for no response, scored. */
export function markedCell(place: AnswerPlace, raw: string, mark: 'omitted' | 'not-reached' | 'invalid'): AnswerCell {
	const given: AnswerGiven = { kind: 'mark', mark };
	return { raw, given, score: scoreAnswer(place, given), isBlank: trimCell(raw) === '' };
}

type Marks = ReadonlyMap<string, 'omitted' | 'not-reached' | 'invalid'>;

function listMarks({ codes = {} }: ResponseMapping): Marks {
	const list = (words: readonly string[] | undefined, mark: 'omitted' | 'not-reached' | 'invalid') =>
		(words ?? []).map((word) => [foldCode(word), mark] as const);
	return new Map([
		...list(codes.omitted, 'omitted'),
		...list(codes.notReached, 'not-reached'),
		...list(codes.invalid, 'invalid'),
	]);
}

function foldCode(text: string): string {
	return trimCell(text).toLowerCase();
}

function readAnswerCell(
	raw: string,
	named: NamedPlace,
	holds: Holds,
	mapping: ResponseMapping,
	marks: Marks,
): CellFinding {
	const { place, options } = named;
	const bare = trimCell(raw);
	if (bare === '') return markedCell(place, '', mapping.blanks ?? 'omitted');
	const mark = marks.get(foldCode(raw));
	if (mark !== undefined) return markedCell(place, bare, mark);
	const cell = place.item.kind === 'explanation' && holds === 'responses' ? { text: bare } : readCell(raw);
	if ('fault' in cell) {
		return { code: 'cell-unreadable', message: `${describeCellFault(cell.fault, bare)} (place ${place.label})` };
	}
	if (holds !== 'responses') return readNumberCell(raw, cell.text, place, holds);
	const numbers = mapping.numbers ?? 'places';
	const read = readAnswerText(place, cell.text, { numbers, ...(options ? { options } : {}) });
	if ('fault' in read) {
		return { code: 'response-unreadable', message: `${read.fault} at place ${place.label} (${place.item.kind})` };
	}
	const given: AnswerGiven = { kind: 'response', response: read.response };
	const isNoNumber = place.item.kind === 'gridded' && !isWholeNumber(cell.text);
	return {
		raw: bare,
		given,
		score: scoreAnswer(place, given),
		isBlank: false,
		...(isNoNumber ? { note: 'no-whole-number' as const } : {}),
	};
}

function readNumberCell(
	raw: string,
	text: string,
	place: AnswerPlace,
	holds: Exclude<Holds, 'responses'>,
): CellFinding {
	const bare = trimCell(raw);
	const number = /^\d{1,6}([.,]\d{1,9})?$/.test(text) ? Number(text.replace(',', '.')) : undefined;
	const most = holds === 'shares' ? 1 : place.points;
	const asked = `${holds === 'shares' ? 'a share' : holds === 'ratings' ? 'a rating' : 'points'} from 0 to ${most}`;
	if (number === undefined) {
		return {
			code: 'points-unreadable',
			message: `expected ${asked} at place ${place.label}, found ${quoteCell(bare)}`,
		};
	}
	// A share of a third comes as 0.33 or 0.333333; nobody writes more than 1 by rounding.
	if (number > most) {
		return { code: 'points-above-maximum', message: `expected ${asked} at place ${place.label}, found ${bare}` };
	}
	if (holds === 'ratings') return readRating(bare, number, place);
	const given: AnswerGiven = { kind: 'points', points: holds === 'shares' ? number * place.points : number };
	return { raw: bare, given, score: scoreAnswer(place, given), isBlank: false };
}

function readRating(raw: string, rating: number, place: AnswerPlace): CellFinding {
	const { item } = place;
	const levels = levelsOf(item);
	if (!levels.includes(rating)) {
		const message = `expected a level of the rubric (${levels.join(', ')}) at place ${place.label}, found ${raw}`;
		return { code: 'points-unreadable', message };
	}
	const response = { ...emptyResponse(item), rating } as Extract<AnswerGiven, { kind: 'response' }>['response'];
	const given: AnswerGiven = { kind: 'response', response };
	return { raw, given, score: scoreAnswer(place, given), isBlank: false };
}

/** Points of the levels of a rubric; none for an item that is no explanation. */
export function levelsOf(item: PartItem): readonly number[] {
	return item.kind === 'explanation' ? item.rubric.map(({ points }) => points) : [];
}
