import type { Supply } from '../../item-bank/types.ts';
import { type CsvField, writeCsv } from '../csv.ts';
import { words } from '../messages/words.ts';
import { type EvidenceBoard, findEvidence } from './board-evidence.ts';
import type { Plan } from './board-plan.ts';
import type { BoardRow, Counts } from './board-rows.ts';
import { type Column, columns, type Lens } from './board-state.ts';

/** What the board shows, whatever the lens. */
export interface ShownBoard {
	readonly supply: Supply;
	readonly rows: readonly BoardRow[];
	readonly totals: Counts;
	readonly plan: Plan | undefined;
	readonly evidence: EvidenceBoard | undefined;
}

/** The board as it is shown, as CSV by RFC 4180: one line a row, the totals last. Texts that a spreadsheet would run as a formula get an apostrophe. */
export function writeBoardCsv(lens: Lens, { supply, rows, totals, plan, evidence }: ShownBoard): string {
	const { least, most, delivers, share, low, high, responses, students } = words.board.csv;
	switch (lens) {
		case 'supply':
			return writeLines(supply, rows, [''], (row, column) => [(row?.counts ?? totals)[column]]);
		case 'plan':
			return writeLines(supply, rows, [least, most, delivers], (row, column) => {
				const cell = plan?.cells.get(row?.key ?? '')?.[column];
				return [cell?.wanted?.min, cell?.wanted?.max, cell?.delivered];
			});
		case 'evidence':
			return writeLines(supply, rows, [share, low, high, responses, students], (row, column) => {
				const cell = findEvidence(evidence, row?.key ?? '', column);
				if (cell?.hidden !== undefined) return [words.board.csv.hidden, undefined, undefined, undefined, undefined];
				return [cell?.share, cell?.low, cell?.high, cell?.responses, cell?.students];
			});
	}
}

/** Headings have no counts of their own and are left out. */
function writeLines(
	supply: Supply,
	rows: readonly BoardRow[],
	parts: readonly string[],
	fieldsOf: (row: BoardRow | undefined, column: Column) => readonly CsvField[],
): string {
	const names = columns.flatMap((column) =>
		parts.map((part) => (part === '' ? words.board.column(column) : `${words.board.column(column)}: ${part}`)),
	);
	return writeCsv([
		[words.board.csv.code, words.board.csv.statement, ...names],
		...[...rows.filter(({ standard }) => standard !== undefined), undefined].map((row) => [
			...headOf(row, supply),
			...columns.flatMap((column) => fieldsOf(row, column)),
		]),
	]);
}

function headOf(row: BoardRow | undefined, supply: Supply): readonly string[] {
	if (!row) return [words.board.allStandards, `${supply.name} ${supply.edition}`];
	return [row.standard?.code ?? row.key, row.standard?.statement ?? ''];
}
