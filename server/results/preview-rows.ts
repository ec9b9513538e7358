import { labelPlace } from '../../item-bank/forms/answer-places.ts';
import type { PreviewRow } from '../../item-bank/types.ts';
import { createCellReader } from './answer-cell.ts';
import { decodeText } from './byte-encoding.ts';
import { trimCell } from './cell-text.ts';
import { readRecords } from './csv-records.ts';
import type { ReadingPlan } from './read-rows.ts';

const shownRows = 5;

/** The first rows of a file as they would be read. Cells of columns that are not taken are left out. */
export async function previewRows({
	source,
	layout,
	mapping,
	findPlace,
}: Omit<ReadingPlan, 'codes'>): Promise<readonly PreviewRow[]> {
	const { student, items, place: placeColumn, answer: answerColumn } = layout.plan;
	const rows: PreviewRow[] = [];
	let skipped = 0;
	for await (const records of readRecords(decodeText(source, layout.encoding), layout.delimiter)) {
		for (const { line, cells } of records) {
			if (skipped < layout.headingRecords) {
				skipped += 1;
				continue;
			}
			const named =
				placeColumn === undefined
					? items.map(({ column, holds, ...place }) => ({ place, holds, cell: cells[column] ?? '' }))
					: [findPlace(trimCell(cells[placeColumn] ?? ''))].flatMap((place) =>
							place ? [{ place, holds: mapping.holds ?? 'responses', cell: cells[answerColumn ?? -1] ?? '' }] : [],
						);
			rows.push({
				line,
				student: trimCell(cells[student] ?? ''),
				answers: named.map(({ place, holds, cell }) => {
					const finding = createCellReader(place, holds, mapping)(cell);
					const { position, part } = place.place;
					const reads = 'message' in finding ? finding.message : finding.score.state;
					return { place: labelPlace(position, part), raw: trimCell(cell), reads };
				}),
			});
			if (rows.length === shownRows) return rows;
		}
	}
	return rows;
}
