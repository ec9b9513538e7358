import type { Box } from '../page/box.ts';
import type { LaidTable } from './report-table.ts';

/** What flows over the pages of a report: boxes that are never broken, and tables broken between rows. */
export type ReportPiece =
	/** A heading stays with what follows it. */
	| { readonly box: Box; readonly isHeading?: boolean }
	| { readonly table: LaidTable }
	/** What follows begins on a new page. */
	| { readonly turn: true };

/** Tables of so many rows and fewer are not broken where a page can hold them. */
const wholeRows = 10;
/** Rows that stand together at the foot and the head of a page at least, so that none is left alone. */
const togetherRows = 3;

/** Deals pieces out to pages in order. Tables fill the page they begin on and go on below their headings on the next. */
export function dealPieces(pieces: readonly ReportPiece[], height: number, gap: number): readonly (readonly Box[])[] {
	const pager = createPager(height, gap);
	for (const piece of pieces) {
		if ('turn' in piece) {
			pager.release();
			pager.turn();
		} else if ('table' in piece) dealTable(piece.table, pager);
		else if (piece.isHeading === true) pager.hold(piece.box);
		else {
			if (piece.box.height > pager.room()) pager.turn();
			pager.release();
			pager.put(piece.box);
		}
	}
	pager.release();
	pager.turn();
	return pager.pages;
}

function dealTable(table: LaidTable, pager: Pager): void {
	let from = 0;
	do {
		if (!beginsWell(table, from, pager.room())) pager.turn();
		pager.release();
		const fitting = Math.max(rowsThatFit(table, from, pager.room()), Math.min(1, table.rows - from));
		const to = leaveTogether(table.rows, from, fitting);
		pager.put(table.piece(from, to));
		from = to;
		if (from < table.rows) pager.turn();
	} while (from < table.rows);
}

/** Whether enough of a table has room: its headings, all of a short table, and of a long one more than a row or two. */
function beginsWell(table: LaidTable, from: number, room: number): boolean {
	const wanted = table.rows <= wholeRows ? table.rows : Math.min(togetherRows, table.rows - from);
	const fitting = rowsThatFit(table, from, room);
	return table.heightOf(from, from) <= room && (fitting >= wanted || from + fitting >= table.rows);
}

/** Pages being filled. Held boxes, which are headings, go with whatever comes next. */
interface Pager {
	readonly pages: readonly (readonly Box[])[];
	/** Height left on the page below the held boxes. */
	readonly room: () => number;
	readonly hold: (box: Box) => void;
	/** Puts the held boxes on the page. */
	readonly release: () => void;
	readonly put: (box: Box) => void;
	/** Begins a new page, unless the page is empty; held boxes stay held. */
	readonly turn: () => void;
}

function createPager(height: number, gap: number): Pager {
	const pages: Box[][] = [];
	let page: Box[] = [];
	let held: Box[] = [];
	const heightOf = (boxes: readonly Box[]): number => boxes.reduce((sum, box) => sum + box.height + gap, 0);
	return {
		pages,
		room: () => height - heightOf(page) - heightOf(held),
		hold: (box) => void held.push(box),
		release: () => {
			page.push(...held);
			held = [];
		},
		put: (box) => void page.push(box),
		turn: () => {
			if (page.length > 0) pages.push(page);
			page = [];
		},
	};
}

function rowsThatFit({ rows, heightOf }: LaidTable, from: number, room: number): number {
	let to = from;
	while (to < rows && heightOf(from, to + 1) <= room) to += 1;
	return to - from;
}

/** The end of a piece: where few rows would be left for the next page, some go along with them. */
function leaveTogether(rows: number, from: number, fitting: number): number {
	const left = rows - from - fitting;
	if (left === 0 || left >= togetherRows) return from + fitting;
	return from + Math.max(1, fitting - (togetherRows - left));
}
