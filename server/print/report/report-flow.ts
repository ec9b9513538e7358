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
	const pages: Box[][] = [];
	let page: Box[] = [];
	let used = 0;
	let held: Box[] = [];
	const turn = (): void => {
		if (page.length > 0) pages.push(page);
		[page, used] = [[], 0];
	};
	const put = (box: Box): void => {
		page.push(box);
		used += box.height + gap;
	};
	const heldHeight = (): number => held.reduce((sum, box) => sum + box.height + gap, 0);
	const release = (): void => {
		for (const box of held) put(box);
		held = [];
	};
	for (const piece of pieces) {
		if ('turn' in piece) {
			release();
			turn();
		} else if ('box' in piece) {
			held.push(piece.box);
			if (piece.isHeading === true) continue;
			if (used + heldHeight() - gap > height) turn();
			release();
		} else {
			const { table } = piece;
			let from = 0;
			do {
				const start = from === 0 ? heldHeight() : 0;
				const fitting = rowsThatFit(table, from, height - used - start);
				const wanted = table.rows <= wholeRows ? table.rows : Math.min(togetherRows, table.rows - from);
				if (from + fitting < table.rows && fitting < wanted && page.length > 0) {
					turn();
					continue;
				}
				release();
				const to = leaveTogether(table.rows, from, Math.max(fitting, Math.min(1, table.rows - from)));
				put(table.piece(from, to));
				from = to;
				if (from < table.rows) turn();
			} while (from < table.rows);
		}
	}
	release();
	turn();
	return pages;
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
