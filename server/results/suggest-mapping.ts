import type { ResponseMapping } from '../../item-bank/types.ts';
import { type ByteSource, decodeText, findEncoding } from './byte-encoding.ts';
import { trimCell } from './cell-text.ts';
import { CsvReader, type CsvRecord } from './csv-records.ts';
import type { PlaceFinder } from './place-names.ts';
import type { RosterGroup } from './read-rows.ts';
import { ResultFileError } from './result-errors.ts';

const lookedAt = 30;

/**
 * A mapping to begin with: the column whose cells are student codes of the bank's groups, the column whose cells name places
 * (then the file is long), the column of groups. Throws ResultFileError when no column holds student codes.
 */
export async function suggestMapping(
	source: ByteSource,
	findPlace: PlaceFinder,
	groups: readonly RosterGroup[],
): Promise<ResponseMapping> {
	const { encoding } = await findEncoding(source);
	let text = '';
	for await (const piece of decodeText(source, encoding)) {
		text += piece;
		if (text.length > 100_000) break;
	}
	const [records] = [',', ';', '\t', '|']
		.map((delimiter) => readBeginning(text, delimiter))
		.sort((a, b) => (b[0]?.cells.length ?? 0) - (a[0]?.cells.length ?? 0));
	const [heading, ...rows] = records ?? [];
	const headings = heading?.cells.map(trimCell) ?? [];
	const codes = new Set(groups.flatMap(({ studentCodes }) => studentCodes));
	const names = new Set(groups.flatMap(({ id, name }) => [id, name.toLowerCase()]));
	const find = (fits: (cell: string) => boolean): number | undefined => {
		const counts = headings.map(
			(_unused, column) => rows.filter(({ cells }) => fits(trimCell(cells[column] ?? ''))).length,
		);
		const best = Math.max(0, ...counts);
		return best > 0 && best * 2 >= rows.length ? counts.indexOf(best) : undefined;
	};
	const student = find((cell) => codes.has(cell.toUpperCase()));
	if (student === undefined) {
		const shown = headings.slice(0, 30).map((each) => `"${each.slice(0, 40)}"`);
		const message = `expected a column of student codes that the bank's groups hold, found none among ${shown.join(', ')}: name it in a mapping`;
		throw new ResultFileError('student-column-unknown', message);
	}
	const group = find((cell) => names.has(cell.toLowerCase()));
	const place = headings.some((name) => findPlace(name) !== undefined)
		? undefined
		: find((cell) => findPlace(cell) !== undefined);
	const name = (column: number): string | number => {
		const text = headings[column] ?? '';
		return text === '' || headings.indexOf(text) !== headings.lastIndexOf(text) ? column + 1 : text;
	};
	const answer = headings.findIndex(
		(each, column) => column !== place && /answer|response|result|points|score/i.test(each),
	);
	return {
		...(place === undefined ? {} : { layout: 'long', place: name(place) }),
		...(place === undefined || answer < 0 ? {} : { answer: name(answer) }),
		student: name(student),
		...(group === undefined ? {} : { group: name(group) }),
	};
}

function readBeginning(text: string, delimiter: string): readonly CsvRecord[] {
	const records: CsvRecord[] = [];
	const reader = new CsvReader(delimiter, (record) => records.push(record));
	reader.take(text);
	if (records.length < lookedAt) reader.end();
	return records.slice(0, lookedAt);
}
