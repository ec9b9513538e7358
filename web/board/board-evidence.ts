import type { Evidence, EvidenceEntry } from '../../item-bank/types.ts';
import type { Column } from './board-state.ts';

/** Evidence by place on the board; what nobody answered is not in it. */
export type EvidenceBoard = ReadonlyMap<string, EvidenceEntry>;

/** Puts the entries where the board shows them: an entry without standard or model is a total. */
export function placeEvidence({ cells }: Evidence): EvidenceBoard {
	return new Map(cells.map((entry) => [placeOf(entry.standard ?? '', entry.model ?? 'total'), entry]));
}

/** The entry of a cell; code '' is the row of totals. */
export function findEvidence(
	board: EvidenceBoard | undefined,
	code: string,
	column: Column,
): EvidenceEntry | undefined {
	return board?.get(placeOf(code, column));
}

function placeOf(code: string, column: Column): string {
	return `${code}\n${column}`;
}
