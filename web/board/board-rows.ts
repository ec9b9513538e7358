import type { StandardSupply, Supply } from '../../item-bank/types.ts';
import { type Column, columns } from './board-state.ts';

/** Items per column. */
export type Counts = Readonly<Record<Column, number>>;

/** A row of the board: a standard, or a heading above standards that has no counts of its own. */
export interface BoardRow {
	/** The code, or the heading. */
	readonly key: string;
	readonly standard: StandardSupply | undefined;
	/** 1 for the outermost. */
	readonly level: number;
	readonly hasRowsBelow: boolean;
	readonly isClosed: boolean;
	/** Codes counted in the row: its own and all below. */
	readonly codes: readonly string[];
	readonly counts: Counts;
}

/** No items anywhere. */
export const noCounts: Counts = { symbols: 0, counters: 0, 'number-line': 0, story: 0, table: 0, total: 0 };

/**
 * The standards as rows in framework order, below the headings they stand under. Every row counts itself and all below it,
 * open or closed; rows below a closed one are left out.
 */
export function buildRows(supply: Supply, closed: readonly string[]): readonly BoardRow[] {
	const known = new Set(supply.standards.map(({ code }) => code));
	const roots = supply.standards.filter(({ parent }) => parent === undefined || !known.has(parent));
	const childrenOf = new Map<string, StandardSupply[]>();
	for (const standard of supply.standards) {
		if (standard.parent === undefined) continue;
		childrenOf.set(standard.parent, [...(childrenOf.get(standard.parent) ?? []), standard]);
	}
	const addBranch = (standard: StandardSupply, level: number): readonly BoardRow[] => {
		const below = (childrenOf.get(standard.code) ?? []).flatMap((child) => addBranch(child, level + 1));
		const all = branchOf(standard, childrenOf);
		const isClosed = closed.includes(standard.code);
		const row: BoardRow = {
			key: standard.code,
			standard,
			level,
			hasRowsBelow: below.length > 0,
			isClosed,
			codes: all.map(({ code }) => code),
			counts: sumCounts(all.map(countsOf)),
		};
		return [row, ...(isClosed ? [] : below)];
	};
	const headings = [...new Set(roots.map(({ heading }) => heading))];
	return headings.flatMap((heading) => {
		const under = roots.filter((root) => root.heading === heading);
		if (heading === undefined) return under.flatMap((root) => addBranch(root, 1));
		const isClosed = closed.includes(heading);
		const branches = under.flatMap((root) => branchOf(root, childrenOf));
		const row: BoardRow = {
			key: heading,
			standard: undefined,
			level: 1,
			hasRowsBelow: true,
			isClosed,
			codes: branches.map(({ code }) => code),
			counts: sumCounts(branches.map(countsOf)),
		};
		return [row, ...(isClosed ? [] : under.flatMap((root) => addBranch(root, 2)))];
	});
}

/** What the whole framework counts. */
export function totalCounts(supply: Supply): Counts {
	return sumCounts(supply.standards.map(countsOf));
}

function branchOf(
	standard: StandardSupply,
	childrenOf: ReadonlyMap<string, readonly StandardSupply[]>,
): readonly StandardSupply[] {
	return [standard, ...(childrenOf.get(standard.code) ?? []).flatMap((child) => branchOf(child, childrenOf))];
}

function countsOf({ supply, total }: StandardSupply): Counts {
	return { ...supply, total };
}

function sumCounts(all: readonly Counts[]): Counts {
	const sums: Record<Column, number> = { ...noCounts };
	for (const counts of all) for (const column of columns) sums[column] += counts[column];
	return sums;
}

/** Counts of things that each have a code and a model type, for rows that cover codes. */
export function countUnder(
	codes: readonly string[] | undefined,
	things: readonly { readonly code: string | undefined; readonly model: Column }[],
): Counts {
	const sums: Record<Column, number> = { ...noCounts };
	for (const { code, model } of things) {
		if (codes !== undefined && (code === undefined || !codes.includes(code))) continue;
		sums[model] += 1;
		sums.total += 1;
	}
	return sums;
}
