import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	type ShownCell,
	suppressSmallCells,
	type TotalledCell,
} from '../../../item-bank/analysis/evidence/suppression.ts';

/** Cells from points earned, students as many as points possible, with totals of rows, columns and all. */
function withTotals(rows: readonly (readonly (readonly [number, number])[])[]): readonly TotalledCell[] {
	const inner = rows.flatMap((cells, row) =>
		cells.map(([earned, students], column) => ({
			row: `r${row}`,
			column: `c${column}`,
			earned,
			students,
			possible: students,
		})),
	);
	const sum = (cells: readonly TotalledCell[], row: string | undefined, column: string | undefined): TotalledCell => ({
		row,
		column,
		earned: cells.reduce((all, { earned }) => all + earned, 0),
		possible: cells.reduce((all, { possible }) => all + possible, 0),
		students: cells.reduce((all, { students }) => all + students, 0),
	});
	const rowNames = [...new Set(inner.map(({ row }) => row))];
	const columnNames = [...new Set(inner.map(({ column }) => column))];
	return [
		...inner,
		...rowNames.map((name) =>
			sum(
				inner.filter(({ row }) => row === name),
				name,
				undefined,
			),
		),
		...columnNames.map((name) =>
			sum(
				inner.filter(({ column }) => column === name),
				undefined,
				name,
			),
		),
		sum(inner, undefined, undefined),
	];
}

/** Hidden cells that the shown ones and the totals determine, by elimination: an attack that knows nothing of the hiding. */
function computable(cells: readonly ShownCell[]): readonly ShownCell[] {
	const unknown = cells.filter(({ hidden }) => hidden !== undefined);
	const line = (pick: (cell: ShownCell) => boolean, isTotal: (cell: ShownCell) => boolean) =>
		unknown.map((cell) => (pick(cell) ? (isTotal(cell) ? -1 : 1) : 0));
	const rows = [...new Set(cells.map(({ row }) => row))].map((name) =>
		line(
			({ row }) => row === name,
			({ column }) => column === undefined,
		),
	);
	const columns = [...new Set(cells.map(({ column }) => column))].map((name) =>
		line(
			({ column }) => column === name,
			({ row }) => row === undefined,
		),
	);
	const matrix: number[][] = [...rows, ...columns];
	let pivot = 0;
	for (let column = 0; column < unknown.length; column += 1) {
		const found = matrix.findIndex((row, at) => at >= pivot && Math.abs(row[column] ?? 0) > 1e-9);
		if (found < 0) continue;
		const [chosen = []] = matrix.splice(found, 1);
		const scaled = chosen.map((value) => value / (chosen[column] ?? 1));
		matrix.splice(pivot, 0, scaled);
		for (const [at, row] of matrix.entries()) {
			if (at !== pivot) matrix[at] = row.map((value, place) => value - (row[column] ?? 0) * (scaled[place] ?? 0));
		}
		pivot += 1;
	}
	return matrix
		.map((row) => row.flatMap((value, at) => (Math.abs(value) > 1e-9 ? [at] : [])))
		.flatMap((used) => (used.length === 1 ? [unknown[used[0] ?? 0]] : []))
		.filter((cell) => cell !== undefined);
}

const drawn = fc
	.integer({ min: 1, max: 5 })
	.chain((columns) =>
		fc.array(
			fc.array(
				fc.record({
					students: fc.oneof(fc.nat(12), fc.integer({ min: 10, max: 60 })),
					part: fc.double({ min: 0, max: 1, noNaN: true }),
				}),
				{ minLength: columns, maxLength: columns },
			),
			{ minLength: 1, maxLength: 6 },
		),
	)
	.map((rows) =>
		withTotals(
			rows.map((cells) => cells.map(({ students, part }) => [Math.round(part * students), students] as const)),
		),
	);

describe('hiding small cells', () => {
	test('hides a second cell in the row and the column of a small one', () => {
		const shown = suppressSmallCells(
			withTotals([
				[
					[3, 5],
					[20, 30],
					[10, 40],
				],
				[
					[11, 20],
					[20, 30],
					[10, 50],
				],
				[
					[31, 60],
					[20, 30],
					[10, 60],
				],
			]),
		);
		const hidden = shown.filter((cell) => cell.hidden).map(({ row, column, hidden: why }) => [row, column, why]);
		expect(hidden).toEqual([
			['r0', 'c0', 'small'],
			['r0', 'c1', 'protects'],
			['r1', 'c0', 'protects'],
			['r1', 'c1', 'protects'],
		]);
	});

	test('shows everything where no group is small, and cells without responses', () => {
		const shown = suppressSmallCells(
			withTotals([
				[
					[3, 15],
					[0, 0],
				],
				[
					[4, 20],
					[1, 12],
				],
			]),
		);
		expect(shown.filter(({ hidden }) => hidden)).toEqual([]);
	});

	test('hides everything where only one cell has students', () => {
		const shown = suppressSmallCells(withTotals([[[3, 5]]]));
		expect(shown.every(({ hidden }) => hidden !== undefined)).toBe(true);
	});

	test('never leaves a small cell open, nor any hidden cell to be computed', () => {
		let hidings = 0;
		fc.assert(
			fc.property(drawn, (cells) => {
				const shown = suppressSmallCells(cells);
				for (const { students, hidden } of shown) {
					if (students > 0 && students < 10) expect(hidden).toBe('small');
					if (hidden) hidings += 1;
				}
				expect(computable(shown)).toEqual([]);
			}),
			{ numRuns: 400 },
		);
		expect(hidings).toBeGreaterThan(100);
	});

	test('hides no line whose hidden cells have together earned nothing or everything while its total shows', () => {
		fc.assert(
			fc.property(drawn, (cells) => {
				const shown = suppressSmallCells(cells);
				for (const name of new Set(cells.map(({ row }) => row))) {
					const line = shown.filter(({ row }) => row === name);
					const total = line.find(({ column }) => column === undefined);
					const unseen = line.filter(({ column, hidden }) => column !== undefined && hidden);
					if (unseen.length === 0 || total?.hidden) continue;
					const earned = unseen.reduce((sum, cell) => sum + cell.earned, 0);
					expect(earned).toBeGreaterThan(0);
					expect(earned).toBeLessThan(unseen.reduce((sum, cell) => sum + cell.possible, 0));
				}
			}),
			{ numRuns: 300 },
		);
	});

	test('the attack finds a cell where only small ones are hidden', () => {
		const cells = withTotals([
			[
				[3, 5],
				[20, 30],
			],
			[
				[11, 20],
				[20, 30],
			],
		]);
		const naive = cells.map((cell): ShownCell => ({ ...cell, hidden: cell.students < 10 ? 'small' : undefined }));
		expect(computable(naive)).toHaveLength(1);
	});
});
