import type { Supply } from '../../item-bank/types.ts';
import { words } from '../messages/words.ts';
import type { Plan } from './board-plan.ts';
import type { BoardRow, Counts } from './board-rows.ts';
import { columns, type Lens } from './board-state.ts';

/** The board as it is shown, as CSV by RFC 4180: one line a row, the totals last. Texts that a spreadsheet would run as a formula get an apostrophe. */
export function writeBoardCsv(
	lens: Lens,
	supply: Supply,
	rows: readonly BoardRow[],
	totals: Counts,
	plan: Plan | undefined,
): string {
	const head = [words.board.csv.code, words.board.csv.statement];
	const names = columns.map((column) => words.board.column(column));
	if (lens === 'plan' && plan) {
		const parts = [words.board.csv.least, words.board.csv.most, words.board.csv.delivers];
		const lines = [
			...rows.filter(({ standard }) => standard).map((row) => ({ key: row.key, row })),
			{ key: '', row: undefined },
		];
		return write([
			[...head, ...names.flatMap((name) => parts.map((part) => `${name}: ${part}`))],
			...lines.map(({ key, row }) => [
				...headOf(row, supply),
				...columns.flatMap((column) => {
					const cell = plan.cells.get(key)?.[column];
					return [cell?.wanted?.min, cell?.wanted?.max, cell?.delivered];
				}),
			]),
		]);
	}
	return write([
		[...head, ...names],
		...rows.map((row) => [...headOf(row, supply), ...columns.map((column) => row.counts[column])]),
		[...headOf(undefined, supply), ...columns.map((column) => totals[column])],
	]);
}

function headOf(row: BoardRow | undefined, supply: Supply): readonly string[] {
	if (!row) return [words.board.allStandards, `${supply.name} ${supply.edition}`];
	return [row.standard?.code ?? row.key, row.standard?.statement ?? ''];
}

function write(lines: readonly (readonly (string | number | undefined)[])[]): string {
	return lines.map((line) => `${line.map(writeField).join(',')}\r\n`).join('');
}

function writeField(value: string | number | undefined): string {
	if (value === undefined) return '';
	if (typeof value === 'number') return String(value);
	const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
