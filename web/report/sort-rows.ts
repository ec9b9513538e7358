import type { ReportTable } from '../../item-bank/types.ts';

/** A cell of a report's table. */
type Cell = ReportTable['rows'][number][number];

/** How a table is put in order: by which column, and which way. */
export interface RowOrder {
	/** From 0. */
	readonly column: number;
	readonly isFalling: boolean;
}

/** Rows in another order; rows without a figure come last either way, and equal rows keep their order. */
export function sortRows(rows: ReportTable['rows'], { column, isFalling }: RowOrder): ReportTable['rows'] {
	const sign = isFalling ? -1 : 1;
	return [...rows].sort((one, other) => {
		const [a, b] = [one[column] ?? null, other[column] ?? null];
		if (a === null || b === null) return Number(a === null) - Number(b === null);
		return sign * compareCells(a, b);
	});
}

/** Whether a column holds figures: each cell that says anything is a number, a share or starts with one. */
export function isFigureColumn(rows: ReportTable['rows'], column: number): boolean {
	const told = rows.flatMap((row) => row[column] ?? []);
	return told.length > 0 && told.every((cell) => figureOf(cell) !== undefined);
}

function compareCells(a: NonNullable<Cell>, b: NonNullable<Cell>): number {
	const [first, second] = [figureOf(a), figureOf(b)];
	if (first !== undefined && second !== undefined) return first - second;
	return String(a).localeCompare(String(b), 'en', { numeric: true });
}

function figureOf(cell: NonNullable<Cell>): number | undefined {
	if (typeof cell === 'number') return cell;
	const found = /^[−-]?\d+(?:\.\d+)?(?=$|\s*%|\s+(?:of|to)\s)/.exec(cell);
	return found ? Number(found[0].replace('−', '-')) : undefined;
}
