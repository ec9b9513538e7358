import type { Problem } from '../../item-bank/problem.ts';
import type { ResponseMapping } from '../../item-bank/types.ts';
import { type ByteSource, decodeText, type Encoding, findEncoding } from './byte-encoding.ts';
import { trimCell } from './cell-text.ts';
import { type ColumnPlan, fold, planColumns } from './columns.ts';
import { CsvReader, type CsvRecord, describeFault } from './csv-records.ts';
import type { PlaceFinder } from './place-names.ts';
import { ResultFileError } from './result-errors.ts';

/** How a file is to be read. */
export interface FileLayout {
	readonly encoding: Encoding;
	readonly delimiter: string;
	/** Records before the first student. */
	readonly headingRecords: number;
	readonly plan: ColumnPlan;
	/** What a person should know. */
	readonly notes: readonly string[];
}

/** A layout with what speaks against reading the file by it. */
export interface LayoutFinding {
	readonly layout: FileLayout;
	readonly problems: readonly Problem[];
}

const delimiters = [',', ';', '\t', '|'];
const beginning = 200_000;

/** Finds encoding, delimiter and columns of a file. Throws ResultFileError for a file that is empty or no text. */
export async function findLayout(
	source: ByteSource,
	mapping: ResponseMapping,
	findPlace: PlaceFinder,
): Promise<LayoutFinding> {
	const found = mapping.encoding === undefined ? await findEncoding(source) : { encoding: mapping.encoding };
	const notes: string[] = [];
	if ('mixedAt' in found && found.mixedAt !== undefined)
		notes.push(`The file mixes encodings from line ${found.mixedAt} on; rows whose answers it touches are rejected.`);
	const text = await readBeginning(source, found.encoding);
	const named = /^sep=(.)\r?\n/.exec(text)?.[1];
	const rows = mapping.headingRows ?? 1;
	const above = (named === undefined ? 0 : 1) + Math.max(0, rows - 1);
	const heading = (delimiter: string): CsvRecord | undefined => readRecord(text, delimiter, above);
	const delimiter = mapping.delimiter ?? named ?? chooseDelimiter(heading, mapping);
	const record = heading(delimiter);
	if (record === undefined) throw new ResultFileError('results-empty', 'expected rows of responses, found none');
	if (record.fault !== undefined) {
		const message = `${describeFault(record.fault)} on line ${record.line}, where the headings are expected`;
		throw new ResultFileError('results-headings', message);
	}
	const headings = record.cells.map((cell, index) => (rows === 0 ? `column ${index + 1}` : trimCell(cell)));
	const { plan, problems } = planColumns(headings, mapping, findPlace);
	const better = problems.some(({ code }) => code === 'column-unknown')
		? delimiters.find((each) => each !== delimiter && hasStudent(heading(each), mapping))
		: undefined;
	const wrong: Problem = {
		code: 'delimiter-wrong',
		path: '/delimiter',
		message: `expected cells separated by ${nameDelimiter(delimiter)}, found a heading row that is separated by ${nameDelimiter(better ?? '')}`,
	};
	return {
		layout: {
			encoding: found.encoding,
			delimiter,
			headingRecords: above + Math.min(1, rows),
			plan,
			notes,
		},
		problems: better === undefined ? problems : [wrong],
	};
}

/** A delimiter in words. */
export function nameDelimiter(delimiter: string): string {
	const names: Readonly<Record<string, string>> = {
		',': 'commas',
		';': 'semicolons',
		'\t': 'tabs',
		'|': 'upright bars',
	};
	return names[delimiter] ?? `"${delimiter}"`;
}

async function readBeginning(source: ByteSource, encoding: Encoding): Promise<string> {
	let text = '';
	for await (const piece of decodeText(source, encoding)) {
		text += piece;
		if (text.length >= beginning) break;
	}
	return text;
}

/** The record after a number of others. */
function readRecord(text: string, delimiter: string, skipped: number): CsvRecord | undefined {
	const records: CsvRecord[] = [];
	const reader = new CsvReader(delimiter, (record) => records.push(record));
	reader.take(text);
	if (records.length <= skipped) reader.end();
	return records[skipped];
}

function chooseDelimiter(heading: (delimiter: string) => CsvRecord | undefined, mapping: ResponseMapping): string {
	const fitting = delimiters.find((delimiter) => hasStudent(heading(delimiter), mapping));
	if (fitting !== undefined) return fitting;
	const [widest = ','] = [...delimiters].sort(
		(a, b) => (heading(b)?.cells.length ?? 0) - (heading(a)?.cells.length ?? 0),
	);
	return widest;
}

/** Whether a heading row has the student's column, and more than that one. */
function hasStudent(record: CsvRecord | undefined, { student }: ResponseMapping): boolean {
	if (record === undefined || record.fault !== undefined || record.cells.length < 2) return false;
	if (typeof student === 'number') return record.cells.length >= student;
	return record.cells.some((cell) => fold(cell) === fold(student));
}
