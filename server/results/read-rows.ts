import type { AnswerPlace } from '../../item-bank/forms/answer-places.ts';
import type { RejectedRow, ResponseMapping } from '../../item-bank/types.ts';
import { type AnswerCell, type CellReader, createCellReader, markedCell } from './answer-cell.ts';
import { type ByteSource, decodeText } from './byte-encoding.ts';
import { quoteCell, readCell, trimCell } from './cell-text.ts';
import { type CsvRecord, describeFault, readRecords } from './csv-records.ts';
import type { FileLayout } from './file-layout.ts';
import type { PlaceFinder } from './place-names.ts';
import { ResultFileError } from './result-errors.ts';
import type { Tally } from './tally.ts';

/** A class group as rows name it. */
export interface RosterGroup {
	readonly id: string;
	readonly name: string;
	readonly studentCodes: readonly string[];
}

/** Everything a file is read with. */
export interface ReadingPlan {
	readonly source: ByteSource;
	readonly layout: FileLayout;
	readonly mapping: ResponseMapping;
	readonly places: readonly AnswerPlace[];
	readonly findPlace: PlaceFinder;
	/** The one group of the file, or those its column of groups may name. */
	readonly groups: readonly RosterGroup[];
	/** From what the file calls a student to the student code; never kept. */
	readonly codes?: ReadonlyMap<string, string>;
}

/** One answer of a row. */
export interface RowAnswer extends AnswerCell {
	readonly position: number;
	readonly part: number | undefined;
}

/** What one row says, after everything personal was left behind. */
export interface StudentRow {
	readonly line: number;
	readonly group: string;
	readonly code: string;
	readonly answers: readonly RowAnswer[];
}

/** Rejected rows at which a file is given up: the mapping is wrong, and a longer list would help nobody. */
export const mostRejected = 10_000;

/**
 * Reads the rows of a file in runs. The file is read twice: once to learn which students or responses come more than once, and
 * once for what they hold. Rows that cannot be taken are told to the tally with their line. Throws ResultFileError when more than
 * {@link mostRejected} rows are rejected.
 */
export async function* readRows(plan: ReadingPlan, tally: Tally): AsyncGenerator<readonly StudentRow[]> {
	const identify = createIdentifier(plan);
	const chosen = await findRepeats(plan, identify);
	const read = plan.mapping.layout === 'long' ? createLongReader(plan) : createWideReader(plan);
	for await (const records of dataRecords(plan)) {
		const rows: StudentRow[] = [];
		for (const record of records) {
			const row = readRow(record, plan, identify, chosen, read, tally);
			if (row) rows.push(row);
		}
		if (tally.rejected.length > mostRejected) throw tooManyRejected(tally.rejected);
		if (rows.length > 0) yield rows;
	}
}

function tooManyRejected(rejected: readonly RejectedRow[]): ResultFileError {
	const problems = rejected.slice(0, 20).map(({ line, code, message }) => ({ code, path: `/line/${line}`, message }));
	const message = `expected rows that fit the mapping, found more than ${mostRejected} that do not: nothing was changed`;
	return new ResultFileError('rows-rejected', message, problems);
}

function readRow(
	record: CsvRecord,
	plan: ReadingPlan,
	identify: Identifier,
	chosen: Repeats,
	read: RowReader,
	tally: Tally,
): StudentRow | undefined {
	const { line, cells } = record;
	if (record.fault === undefined && cells.every((cell) => trimCell(cell) === '')) return undefined;
	tally.countRow();
	const refuse = (code: string, message: string): undefined => tally.reject({ line, code, message });
	if (record.fault !== undefined) return refuse('row-quotes', describeFault(record.fault));
	const { headings } = plan.layout.plan;
	if (cells.length !== headings.length) {
		const hint = cells.length > headings.length ? ': a cell that holds the separator needs quotation marks' : '';
		return refuse(
			'row-length',
			`expected ${headings.length} cells as in the heading row, found ${cells.length}${hint}`,
		);
	}
	const who = identify(cells);
	if ('message' in who) return refuse(who.code, who.message);
	const slot = chosen.lineOf(who.key, cells);
	if (slot !== undefined && slot < 0) {
		return refuse('row-repeated', `expected "${who.code}" once${chosen.what}, found more, the first on line ${-slot}`);
	}
	if (slot !== undefined && slot !== line) {
		tally.passOver();
		return undefined;
	}
	const answers = read(cells);
	if ('faults' in answers) {
		const [first, ...others] = answers.faults;
		const more = others.length === 0 ? '' : `; ${others.map(({ message }) => message).join('; ')}`;
		return refuse(first?.code ?? 'response-unreadable', `${first?.message}${more}`);
	}
	if (answers.isAbsent) {
		tally.noteAbsent(who.code);
		return undefined;
	}
	tally.take(line, answers.taken);
	return { line, group: who.group, code: who.code, answers: answers.taken };
}

/** The records below the headings. */
async function* dataRecords({ source, layout }: ReadingPlan): AsyncGenerator<readonly CsvRecord[]> {
	let skipped = 0;
	for await (const records of readRecords(decodeText(source, layout.encoding), layout.delimiter)) {
		const skip = Math.min(records.length, layout.headingRecords - skipped);
		skipped += skip;
		yield skip === 0 ? records : records.slice(skip);
	}
}

type Who =
	| { readonly key: string; readonly group: string; readonly code: string }
	| { readonly code: string; readonly message: string };
type Identifier = (cells: readonly string[]) => Who;

/** Says whose row it is. */
function createIdentifier({ layout, mapping, groups, codes }: ReadingPlan): Identifier {
	const { student, group: groupColumn } = layout.plan;
	const byName = new Map(
		groups.flatMap(
			(group) =>
				[
					[group.id, group],
					[group.name.toLowerCase(), group],
				] as const,
		),
	);
	const members = new Map(groups.map(({ id, studentCodes }) => [id, new Set(studentCodes)]));
	return (cells) => {
		const [only] = groups;
		const name = groupColumn === undefined ? '' : trimCell(cells[groupColumn] ?? '');
		const group = groupColumn === undefined ? only : byName.get(name.toLowerCase());
		if (group === undefined) {
			return { code: 'group-unknown', message: `expected the id or name of a class group, found ${quoteCell(name)}` };
		}
		const cell = readCell(cells[student] ?? '');
		const found = 'text' in cell ? cell.text : trimCell(cells[student] ?? '');
		const code = (codes?.get(found.toLowerCase()) ?? found).toUpperCase();
		if (found === '') return { code: 'student-missing', message: 'expected a student code, found an empty cell' };
		if (codes !== undefined && !codes.has(found.toLowerCase())) {
			return { code: 'student-unknown', message: `expected a student of the file of codes, found ${quoteCell(found)}` };
		}
		if (!/^[A-Z0-9][A-Z0-9-]{1,23}$/.test(code)) {
			const message = `expected a student code of 2 to 24 capital letters, digits and hyphens, found ${quoteCell(found)}`;
			return { code: 'student-unknown', message };
		}
		if (mapping.newStudents !== 'keep' && !members.get(group.id)?.has(code)) {
			return {
				code: 'student-unknown',
				message: `expected a student code of ${group.name}, found ${quoteCell(found)}`,
			};
		}
		return { key: `${group.id} ${code}`, group: group.id, code };
	};
}

interface Repeats {
	/** Line of the row to take; negative the first line of several to refuse; undefined where the row is not in question. */
	readonly lineOf: (key: string, cells: readonly string[]) => number | undefined;
	readonly what: string;
}

/** Which row of each student, or of each response in long files, is to be taken. */
async function findRepeats(plan: ReadingPlan, identify: Identifier): Promise<Repeats> {
	const { layout, mapping, places, findPlace } = plan;
	const { place: placeColumn } = layout.plan;
	const isLong = placeColumn !== undefined;
	const lines = new Map<string, Int32Array>();
	const slotOf = (cells: readonly string[]): number | undefined =>
		isLong ? findPlace(trimCell(cells[placeColumn] ?? ''))?.index : 0;
	for await (const records of dataRecords(plan)) {
		for (const { line, cells, fault } of records) {
			if (fault !== undefined || cells.length !== layout.plan.headings.length) continue;
			const who = identify(cells);
			const slot = slotOf(cells);
			if ('message' in who || slot === undefined) continue;
			let own = lines.get(who.key);
			if (own === undefined) {
				own = new Int32Array(isLong ? places.length : 1);
				lines.set(who.key, own);
			}
			const before = own[slot] ?? 0;
			if (before === 0 || mapping.repeats === 'last') own[slot] = line;
			else if (mapping.repeats !== 'first') own[slot] = -Math.abs(before);
		}
	}
	return {
		what: isLong ? ' at each place' : '',
		lineOf: (key, cells) => {
			const slot = slotOf(cells);
			return slot === undefined ? undefined : lines.get(key)?.[slot];
		},
	};
}

type RowFinding =
	| { readonly taken: readonly RowAnswer[]; readonly isAbsent: boolean }
	| { readonly faults: readonly { readonly code: string; readonly message: string }[] };
type RowReader = (cells: readonly string[]) => RowFinding;

function createWideReader({ layout, mapping }: ReadingPlan): RowReader {
	const columns = layout.plan.items.map((item) => ({ ...item, read: createCellReader(item, item.holds, mapping) }));
	return (cells) => {
		const faults: { code: string; message: string }[] = [];
		const taken: RowAnswer[] = [];
		let lastFilled = -1;
		for (const { column, place, read } of columns) {
			const cell = read(cells[column] ?? '');
			if ('message' in cell) faults.push(cell);
			else {
				if (!cell.isBlank) lastFilled = taken.length;
				taken.push({ position: place.position, part: place.part, ...cell });
			}
		}
		if (faults.length > 0) return { faults };
		const isAbsent = lastFilled < 0 && mapping.blankRows !== 'taken';
		const atEnd = mapping.blanksAtEnd;
		if (atEnd === undefined) return { taken, isAbsent };
		const marked = taken.map((answer, index) => {
			const place = columns[index]?.place;
			return index <= lastFilled || place === undefined ? answer : { ...answer, ...markedCell(place, '', atEnd) };
		});
		return { taken: marked, isAbsent };
	};
}

function createLongReader({ layout, mapping, findPlace }: ReadingPlan): RowReader {
	const { place: placeColumn = -1, answer: answerColumn = -1 } = layout.plan;
	const readers = new Map<number, CellReader>();
	return (cells) => {
		const name = trimCell(cells[placeColumn] ?? '');
		const named = findPlace(name);
		if (named === undefined) {
			const message = `expected a position, item id or platform identifier of the form, found ${quoteCell(name)}`;
			return { faults: [{ code: 'place-unknown', message }] };
		}
		let read = readers.get(named.index);
		if (read === undefined) {
			read = createCellReader(named, mapping.holds ?? 'responses', mapping);
			readers.set(named.index, read);
		}
		const cell = read(cells[answerColumn] ?? '');
		if ('message' in cell) return { faults: [cell] };
		const { position, part } = named.place;
		return { taken: [{ position, part, ...cell }], isAbsent: false };
	};
}
