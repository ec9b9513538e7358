/** A table of evidence to be shown: rows and columns of cells, with totals of rows, of columns, and of all. */
export interface TotalledCell {
	/** Undefined in the row of totals. */
	readonly row: string | undefined;
	/** Undefined in the column of totals. */
	readonly column: string | undefined;
	readonly students: number;
	/** What adds up along rows and columns. */
	readonly earned: number;
	readonly possible: number;
}

/** Why a cell is not shown. */
export type Hiding =
	/** Fewer students than may be shown. */
	| 'small'
	/** Shown, it would let a small cell be computed from the totals. */
	| 'protects';

/** A cell with whether it is shown. */
export interface ShownCell extends TotalledCell {
	readonly hidden: Hiding | undefined;
}

/** Students below which a group is not shown, unless a department decides otherwise (common practice, reference/trade.md 7.5). */
export const leastStudents = 10;

/**
 * Hides every cell with some but fewer than `least` students, then more cells until no hidden one can be computed from the
 * rows, columns and totals that are shown. Cells and totals are the edges of a graph between rows and columns (the row and
 * the column of totals among them), each row and column being an equation; a hidden cell can be computed exactly when its edge
 * lies on no cycle of hidden edges (Gusfield 1988, from memory). So each such edge is closed to a cycle along the path that hides
 * fewest students. Where the hidden cells of a row or column have together earned nothing or everything, which would give
 * each away, another cell of that line is hidden too. Cells without responses are known to be empty from the form and
 * neither hidden nor used. What it cannot guard against: comparing two reports on groups that differ by few students.
 */
export function suppressSmallCells(
	cells: readonly TotalledCell[],
	least: number = leastStudents,
): readonly ShownCell[] {
	const edges = cells.map((cell, index) => ({
		index,
		from: `row ${cell.row ?? '\n'}`,
		to: `column ${cell.column ?? '\n'}`,
		students: cell.students,
		cell,
	}));
	const hidden = new Map<number, Hiding>();
	for (const { index, students } of edges) if (students > 0 && students < least) hidden.set(index, 'small');
	const used = edges.filter(({ students }) => students > 0);
	const hide = (index: number): void => {
		if (!hidden.has(index)) hidden.set(index, 'protects');
	};
	for (let before = -1; before !== hidden.size; ) {
		before = hidden.size;
		for (const edge of used) {
			if (!hidden.has(edge.index)) continue;
			const path = findPath(edge, used, hidden);
			if (path === undefined) {
				// No cycle is left to close: everything in its row and column goes.
				for (const { index, from, to } of used) if (from === edge.from || to === edge.to) hide(index);
			} else for (const index of path) hide(index);
		}
		for (const [end, total] of [
			['from', 'column'],
			['to', 'row'],
		] as const) {
			for (const line of new Set(used.map((edge) => edge[end]))) {
				const extra = findTelling(
					used.filter((edge) => edge[end] === line),
					hidden,
					({ cell }) => cell[total] === undefined,
				);
				if (extra !== undefined) hide(extra);
			}
		}
	}
	return cells.map((cell, index) => ({ ...cell, hidden: hidden.get(index) }));
}

interface Edge {
	readonly index: number;
	readonly from: string;
	readonly to: string;
	readonly students: number;
	readonly cell: TotalledCell;
}

/** The other way round from one end of an edge to the other that newly hides fewest students (Dijkstra 1959). */
function findPath(
	edge: Edge,
	edges: readonly Edge[],
	hidden: ReadonlyMap<number, Hiding>,
): readonly number[] | undefined {
	const costs = new Map<string, number>([[edge.from, 0]]);
	const paths = new Map<string, readonly number[]>([[edge.from, []]]);
	const done = new Set<string>();
	for (;;) {
		const open = [...costs].filter(([node]) => !done.has(node)).sort(([, a], [, b]) => a - b)[0];
		if (open === undefined) return undefined;
		const [node, cost] = open;
		if (node === edge.to) return paths.get(node);
		done.add(node);
		for (const next of edges) {
			if (next.index === edge.index || (next.from !== node && next.to !== node)) continue;
			const end = next.from === node ? next.to : next.from;
			// A fixed part, so that of ways alike the shorter is taken.
			const sum = cost + (hidden.has(next.index) ? 0 : next.students + 1);
			if (sum < (costs.get(end) ?? Number.POSITIVE_INFINITY)) {
				costs.set(end, sum);
				paths.set(end, [...(paths.get(node) ?? []), next.index]);
			}
		}
	}
}

/** A shown cell to hide beside hidden ones that have together nothing or everything; undefined where none is needed or left. */
function findTelling(
	line: readonly Edge[],
	hidden: ReadonlyMap<number, Hiding>,
	isTotal: (edge: Edge) => boolean,
): number | undefined {
	const total = line.find(isTotal);
	const unseen = line.filter((edge) => hidden.has(edge.index) && !isTotal(edge));
	if (total === undefined || hidden.has(total.index) || unseen.length === 0) return undefined;
	const earned = unseen.reduce((sum, { cell }) => sum + cell.earned, 0);
	const possible = unseen.reduce((sum, { cell }) => sum + cell.possible, 0);
	if (earned > 0 && earned < possible) return undefined;
	const helps = ({ cell }: Edge): boolean => cell.earned > 0 && cell.earned < cell.possible;
	const shown = line.filter((edge) => !hidden.has(edge.index) && !isTotal(edge));
	const [next] = [...shown].sort((a, b) => Number(helps(b)) - Number(helps(a)) || a.students - b.students);
	return next?.index ?? total.index;
}
