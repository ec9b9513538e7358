import type { Report } from '../../item-bank/types.ts';
import { type CsvCell, writeCsv } from './csv-output.ts';

/** A report as CSV: title, cautions, then every section with its notes and table. Safe to open in a spreadsheet. */
export function writeReportCsv({ title, copy, cautions, sections }: Report): string {
	const rows: (readonly CsvCell[])[] = [
		[copy === 'own' ? 'class teacher’s own copy: not to be passed on' : 'shared copy'],
	];
	rows.push(...cautions.map((caution) => [caution]));
	for (const section of sections) {
		rows.push([], [section.title], ...section.notes.map((note) => [note]));
		if (section.table === undefined) continue;
		const { headings, rows: cells } = section.table;
		rows.push(headings, ...cells.map((row) => row.map((cell) => cell ?? undefined)));
	}
	const width = Math.max(...rows.map((row) => row.length));
	const level = rows.map((row) => [...row, ...new Array<undefined>(width - row.length).fill(undefined)]);
	return writeCsv([title, ...new Array<string>(width - 1).fill('')], level);
}
