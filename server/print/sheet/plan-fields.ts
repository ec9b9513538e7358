import { columnCount, columnSymbols } from '../../../item-bank/responses/grid.ts';
import type { BubbleColumn, ChoiceField, GridField, GridProfile, StudentCodeField } from '../../../item-bank/types.ts';
import type { AnswerPlace } from '../placed-items.ts';
import { round, type SheetMeasures } from './measures.ts';

/** Width of a choice row from its left edge, millimetres. */
export function choiceWidth(options: number, measures: SheetMeasures): number {
	return measures.label + (options - 1) * measures.pitch + measures.bubble / 2;
}

/** What every field of an item says of it. */
export function fieldOf({
	position,
	part,
	id,
	version,
}: AnswerPlace): Pick<ChoiceField, 'position' | 'part' | 'item' | 'itemVersion'> {
	return { position, ...(part === undefined ? {} : { part }), item: id, itemVersion: version };
}

/** Letters that an item is answered with in one row of bubbles; none for items answered otherwise. */
export function rowSymbols({ item }: AnswerPlace): readonly string[] {
	if (item.kind === 'inline-choice') return item.choices.map(({ id }) => id);
	return item.kind === 'choice' || item.kind === 'multiple-choice' ? item.options.map(({ id }) => id) : [];
}

/** Bubbles in a row; `x`, `y` is the centre of the first. */
export function planRow(symbols: readonly string[], x: number, y: number, measures: SheetMeasures): BubbleColumn {
	const bubbles = symbols.map((symbol, index) => ({ symbol, x: round(x + index * measures.pitch), y: round(y) }));
	return { bubbles };
}

/** The bubbles of an item with letters in one row; `x`, `y` is the row's left edge and middle. */
export function planChoice(place: AnswerPlace, x: number, y: number, measures: SheetMeasures): ChoiceField {
	const marks = place.item.kind === 'multiple-choice' ? 'several' : 'one';
	const columns = [planRow(rowSymbols(place), x + measures.label, y, measures)];
	return { kind: 'choice', ...fieldOf(place), marks, columns };
}

/** Width and height of a grid with its heading, millimetres. */
export function gridSize(
	profile: GridProfile,
	measures: SheetMeasures,
): { readonly width: number; readonly height: number } {
	const rows = Math.max(...columnsOf(profile).map((symbols) => symbols.length));
	const height = measures.heading + measures.box + 1 + rows * measures.pitch;
	return { width: columnCount(profile) * measures.pitch, height };
}

/** A signed grid with its boxes: `x`, `y` is the top left corner of its heading. */
export function planGrid(
	place: AnswerPlace,
	profile: GridProfile,
	x: number,
	y: number,
	measures: SheetMeasures,
): GridField {
	return { kind: 'grid', ...fieldOf(place), columns: planGridColumns(profile, x, y + measures.heading, measures) };
}

/** The columns of a grid: boxes from `y` down, bubbles under them. */
export function planGridColumns(
	profile: GridProfile,
	x: number,
	y: number,
	measures: SheetMeasures,
): readonly BubbleColumn[] {
	const { pitch } = measures;
	return columnsOf(profile).map((symbols, column) => {
		const left = x + column * pitch;
		const top = y + measures.box + 1;
		return {
			box: boxAt(left, y, pitch, measures.box),
			bubbles: symbols.map((symbol, row) => ({
				symbol,
				x: round(left + pitch / 2),
				y: round(top + (row + 0.5) * pitch),
			})),
		};
	});
}

function columnsOf(profile: GridProfile): readonly (readonly string[])[] {
	return Array.from({ length: columnCount(profile) }, (_, column) => columnSymbols(profile, column));
}

/** What a student code can be bubbled with. */
const codeSymbols = [...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-'];

/** Width and height of the field for a student code, millimetres. */
export function codeFieldSize(
	characters: number,
	width: number,
	measures: SheetMeasures,
): { readonly perRow: number; readonly step: number; readonly rowHeight: number; readonly height: number } {
	const step = measures.codeColumns * measures.pitch + (measures.codeColumns > 4 ? 8 : 3.5);
	const perRow = Math.min(characters, Math.floor((width + 3.5) / step));
	const rows = Math.ceil(characters / perRow);
	const lines = Math.ceil(codeSymbols.length / measures.codeColumns);
	const rowHeight = measures.box + 1 + lines * measures.pitch + 3;
	return { perRow, step, rowHeight, height: measures.heading + rows * rowHeight };
}

/** A field to bubble a student code in; `x`, `y` is the top left corner of its heading. */
export function planCodeField(
	characters: number,
	x: number,
	y: number,
	width: number,
	measures: SheetMeasures,
): StudentCodeField {
	const { perRow, step, rowHeight } = codeFieldSize(characters, width, measures);
	const { pitch, codeColumns } = measures;
	const lines = Math.ceil(codeSymbols.length / codeColumns);
	const columns = Array.from({ length: characters }, (_, index): BubbleColumn => {
		const left = x + (index % perRow) * step;
		const top = y + measures.heading + Math.floor(index / perRow) * rowHeight;
		return {
			box: boxAt(left, top, codeColumns * pitch, measures.box),
			bubbles: codeSymbols.map((symbol, at) => ({
				symbol,
				x: round(left + (Math.floor(at / lines) + 0.5) * pitch),
				y: round(top + measures.box + 1 + ((at % lines) + 0.5) * pitch),
			})),
		};
	});
	return { kind: 'student-code', columns };
}

function boxAt(x: number, y: number, width: number, height: number): NonNullable<BubbleColumn['box']> {
	return { x: round(x), y: round(y), width: round(width), height: round(height) };
}
