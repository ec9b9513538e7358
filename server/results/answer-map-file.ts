import { type AnswerPlace, labelPlace } from '../../item-bank/forms/answer-places.ts';
import { CsvReader, type CsvRecord } from './csv-records.ts';
import { ResultFileError } from './result-errors.ts';

/** One row of the answer map an export writes: which platform item is which place, and its options. */
export interface AnswerMapRow {
	readonly identifier: string;
	readonly item: string;
	readonly version: number;
	readonly label: string;
	/** From the platform's identifiers, in capitals, to option ids of the bank or numbers of places on a line. */
	readonly options: ReadonlyMap<string, string>;
}

const wanted = ['position', 'part', 'item', 'version', 'platform item', 'option identifiers', 'option ids in the bank'];

/**
 * Reads the answer map written beside an export (server/qti/answer-map.ts). Throws ResultFileError for another file, and for
 * a map of another form or version than the places are of.
 */
export function readAnswerMap(text: string, places: readonly AnswerPlace[]): readonly AnswerMapRow[] {
	const records: CsvRecord[] = [];
	const reader = new CsvReader(',', (record) => records.push(record));
	reader.take(text.replace(/^\uFEFF/, ''));
	reader.end();
	const [heading, ...rows] = records;
	const columns = wanted.map((name) => heading?.cells.indexOf(name) ?? -1);
	if (columns.includes(-1) || records.some(({ fault }) => fault !== undefined)) {
		const message = 'expected the answer map written beside an export, found another file';
		throw new ResultFileError('answer-map-unreadable', message);
	}
	return rows.map(({ cells, line }) => {
		const [position = '', part = '', item = '', version = '', identifier = '', names = '', ids = ''] = columns.map(
			(column) => cells[column] ?? '',
		);
		const label = labelPlace(Number(position), part === '' ? undefined : Number(part));
		const place = places.find((each) => each.label === label);
		if (place?.record.id !== item || place.record.version !== Number(version)) {
			const found = place ? `"${place.record.id}" version ${place.record.version}` : 'no such place';
			const message = `expected the answer map of this version of the form, found item "${item}" version ${version} at place ${label} on line ${line}, where the form has ${found}`;
			throw new ResultFileError('answer-map-mismatch', message);
		}
		const bank = splitWords(ids);
		const options = new Map(splitWords(names).map((name, index) => [name.toUpperCase(), bank[index] ?? '']));
		return { identifier, item, version: Number(version), label, options };
	});
}

function splitWords(text: string): readonly string[] {
	return text.split(' ').filter((word) => word !== '');
}
