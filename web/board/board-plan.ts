import { leadAlignment } from '../../item-bank/forms/item-traits.ts';
import type { Blueprint, FormDetails, ItemEntry, Range, Supply } from '../../item-bank/types.ts';
import { type BoardRow, type Counts, countUnder } from './board-rows.ts';
import { type Column, columns } from './board-state.ts';

/** What one cell of the plan says: the range asked for and what the form delivers, either of which may be missing. */
export interface PlanCell {
	readonly wanted: Range | undefined;
	readonly delivered: number | undefined;
	/** How far the form is from the range: below 0 so many short, above 0 so many over. */
	readonly off: number;
}

/** The plan of the board: a cell for every row and column, the totals under ''. */
export interface Plan {
	readonly cells: ReadonlyMap<string, Readonly<Record<Column, PlanCell>>>;
	/** Largest number in any cell, and in any total; lines are drawn to it, so that they compare at a glance. */
	readonly most: number;
	readonly mostInTotal: number;
	/** Items of the form that have no standard in the framework of the board. */
	readonly unplaced: number;
	/** Cells that the form misses. */
	readonly missed: number;
	/** Whether the blueprint is written in another framework, so that its ranges cannot be shown. */
	readonly isElsewhere: boolean;
}

/** Sets a blueprint and a form against the rows of the board. Items count under their lead alignment in the framework shown. */
export function planBoard(
	supply: Supply,
	rows: readonly BoardRow[],
	blueprint: Blueprint | undefined,
	form: FormDetails | undefined,
): Plan {
	const isElsewhere =
		blueprint !== undefined && (blueprint.framework !== supply.framework || blueprint.edition !== supply.edition);
	const plan = isElsewhere ? undefined : blueprint;
	const things = form?.items.map(({ item }) => ({
		code: leadAlignment(item, supply.framework, supply.edition)?.code,
		model: item.given,
	}));
	const cells = new Map<string, Readonly<Record<Column, PlanCell>>>();
	for (const { key, standard, codes } of rows) {
		if (standard) cells.set(key, cellsOf(plan, standard.code, things && countUnder(codes, things)));
	}
	cells.set('', cellsOf(plan, undefined, things && countUnder(undefined, things)));
	const all = [...cells].flatMap(([code, row]) => columns.map((column) => ({ code, column, cell: row[column] })));
	const largest = (isTotal: boolean): number =>
		Math.max(
			4,
			...all
				.filter(({ code, column }) => (code === '' || column === 'total') === isTotal)
				.map(({ cell }) => Math.max(cell.wanted?.max ?? 0, cell.wanted?.min ?? 0, cell.delivered ?? 0)),
		);
	return {
		cells,
		most: largest(false),
		mostInTotal: largest(true),
		unplaced: things?.filter(({ code }) => code === undefined).length ?? 0,
		missed: all.filter(({ cell }) => cell.off !== 0).length,
		isElsewhere,
	};
}

function cellsOf(
	plan: Blueprint | undefined,
	code: string | undefined,
	delivered: Counts | undefined,
): Readonly<Record<Column, PlanCell>> {
	const cellOf = (column: Column): PlanCell => {
		const wanted = plan === undefined ? undefined : rangeOf(plan, code, column);
		const count = delivered?.[column];
		return { wanted, delivered: count, off: wanted === undefined || count === undefined ? 0 : distance(count, wanted) };
	};
	return Object.fromEntries(columns.map((column) => [column, cellOf(column)])) as Record<Column, PlanCell>;
}

function rangeOf(plan: Blueprint, code: string | undefined, column: Column): Range | undefined {
	if (code === undefined && column === 'total') return plan.items;
	return plan.cells.find(
		(cell) => cell.standard === code && (cell.model ?? 'total') === column && cell.items !== undefined,
	)?.items;
}

function distance(count: number, { min = 0, max = Number.POSITIVE_INFINITY }: Range): number {
	if (count < min) return count - min;
	return count > max ? count - max : 0;
}

/** The items of a form that a cell counts, in form order. codes undefined: any standard, or none. */
export function formItemsIn(
	form: FormDetails,
	supply: Supply,
	codes: readonly string[] | undefined,
	column: Column,
): readonly ItemEntry[] {
	return form.items.filter(({ item }) => {
		const code = leadAlignment(item, supply.framework, supply.edition)?.code;
		const isUnder = codes === undefined || (code !== undefined && codes.includes(code));
		return isUnder && (column === 'total' || item.given === column);
	});
}
