/** How far two readers agree on the points of the same responses. */
export interface Agreement {
	/** Rows: points of the first reader from 0; columns: points of the second. */
	readonly table: readonly (readonly number[])[];
	readonly count: number;
	/** Share of responses given the same points; undefined without any. */
	readonly exact: number | undefined;
	/** Chance-corrected agreement, Cohen 1960; undefined where chance alone would agree always. */
	readonly kappa: number | undefined;
	/** The same with squared differences as weights, Cohen 1968. */
	readonly weightedKappa: number | undefined;
}

/** Compares pairs of points, the first reader's and the second's, on a scale from 0 to most. */
export function compareReaders(pairs: readonly (readonly [number, number])[], most: number): Agreement {
	const size = most + 1;
	const table = Array.from({ length: size }, () => new Array<number>(size).fill(0));
	for (const [first, second] of pairs) {
		const row = table[first];
		if (row?.[second] !== undefined) row[second] += 1;
	}
	const count = pairs.length;
	const equal = pairs.filter(([first, second]) => first === second).length;
	return {
		table,
		count,
		exact: count === 0 ? undefined : equal / count,
		kappa: kappaOf(table, count, (first, second) => (first === second ? 0 : 1)),
		weightedKappa: kappaOf(table, count, (first, second) => (first - second) ** 2),
	};
}

/** 1 − observed / expected disagreement, with weights of disagreement. */
function kappaOf(
	table: readonly (readonly number[])[],
	count: number,
	weigh: (first: number, second: number) => number,
): number | undefined {
	const rows = table.map((row) => row.reduce((sum, cell) => sum + cell, 0));
	const columns = table.map((_unused, column) => table.reduce((sum, row) => sum + (row[column] ?? 0), 0));
	let [observed, expected] = [0, 0];
	for (const [first, row] of table.entries()) {
		for (const [second, cell] of row.entries()) {
			const weight = weigh(first, second);
			observed += weight * cell;
			expected += (weight * (rows[first] ?? 0) * (columns[second] ?? 0)) / Math.max(1, count);
		}
	}
	return expected === 0 ? undefined : 1 - observed / expected;
}
