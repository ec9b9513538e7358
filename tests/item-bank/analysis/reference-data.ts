import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildScoreTable, type ScoreRow, type ScoreTable } from '../../../item-bank/analysis/score-table.ts';
import { referenceFolder } from '../../helpers/reference.ts';

const folder = join(referenceFolder ?? '', 'reference/psychometrics');

/** Whether the reference set for item analysis is at hand. */
export const hasReference = referenceFolder !== undefined && existsSync(join(folder, 'reference.json'));

/** Figures of the reference set by name; columns are lists. */
// biome-ignore lint/suspicious/noExplicitAny: a file of another program, whose shape the tests read piece by piece
export type Figures = any;

/** All figures of the reference set (R 4.2.2, see its notes). */
export function readReference(): Figures {
	return JSON.parse(readFileSync(join(folder, 'reference.json'), 'utf8'));
}

/** Rows of a data file, cell by cell, without quotes. */
export function readCsv(name: string): { readonly header: readonly string[]; readonly rows: readonly string[][] } {
	const [header = [], ...rows] = readFileSync(join(folder, name), 'utf8')
		.trim()
		.split(/\r?\n/)
		.map((line) => line.split(',').map((cell) => cell.replaceAll('"', '')));
	return { header, rows };
}

/** A data set of right or wrong items as a table; blanks are not given, or wrong. Columns that are no items are left out. */
export function readDataset(name: string, blanks: 'not-given' | 'wrong' = 'not-given'): ScoreTable {
	const { header, rows } = readCsv(name);
	const items = header.filter((id) => !['gender', 'age'].includes(id));
	return tableOf(
		items,
		rows.map((cells) =>
			items.map((id) => {
				const cell = cells[header.indexOf(id)] ?? '';
				return cell === '' || cell === 'NA' ? (blanks === 'wrong' ? 0 : undefined) : Number(cell);
			}),
		),
	);
}

/** A table from points, one list a student; undefined is not given. */
export function tableOf(
	items: readonly string[],
	students: readonly (readonly (number | undefined)[])[],
	maximum = 1,
): ScoreTable {
	const rows = students.flatMap((points, student) =>
		points.flatMap((earned, item): readonly ScoreRow[] =>
			earned === undefined
				? []
				: [{ student: `s${student}`, item: items[item] ?? '', points: earned, state: 'answered' }],
		),
	);
	return buildScoreTable(
		items.map((id) => ({ id, version: 1, maximum })),
		rows,
		students.map((_, student) => `s${student}`),
	).table;
}

/** The data sets of the reference set that hold right or wrong items, by the names of its figures. */
export const rightOrWrongSets: readonly (readonly [string, () => ScoreTable])[] = [
	['lsat6', () => readDataset('lsat6.csv')],
	['lsat7', () => readDataset('lsat7.csv')],
	['raschdat1', () => readDataset('raschdat1.csv')],
	['difsim', () => readDataset('difsim.csv')],
	['blot', () => readDataset('blot.csv')],
	['ability_listwise', () => readDataset('ability.csv')],
	['ability_na0', () => readDataset('ability.csv', 'wrong')],
	['wuensch10', () => readDataset('wuensch10.csv')],
];
