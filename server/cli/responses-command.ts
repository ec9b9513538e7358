import { createReadStream } from 'node:fs';
import type { ReadingReport, RejectedRow, ResponseMapping } from '../../item-bank/types.ts';
import { previewResponses, type ResponseReading, readResponses } from '../response-reading.ts';
import type { ByteSource } from '../results/byte-encoding.ts';
import { readCodes } from '../results/code-list.ts';
import { writeCsv } from '../results/csv-output.ts';
import { nameDelimiter } from '../results/file-layout.ts';
import { FileRefusedError } from '../store/storage-errors.ts';
import type { Call, Command, Outcome } from './command.ts';
import { checkFree, readBytes, readJson, writeFiles } from './files.ts';
import { textOf } from './sittings-command.ts';
import { UsageError } from './usage-error.ts';
import { oneOf, oneWord, pickAction, versionOf } from './words.ts';

/** Reads files of responses. */
export const responsesCommand: Command = {
	name: 'responses',
	usage: [
		'responses preview FILE --form F [--version N] [--map MAP] [--answer-map FILE]',
		'responses read FILE --form F [--version N] [--group G] --date D --map MAP [--mode paper|platform|hand] [--codes FILE] [--answer-map FILE] [--add|--replace] [--dry-run] [--rejected FILE]',
	],
	summary: 'reads responses from CSV files of sheets, platforms and spreadsheets',
	options: {
		form: { type: 'string', help: 'form that was sat' },
		version: { type: 'string', help: 'of the form; the newest when left out' },
		group: { type: 'string', help: 'class group; not needed where the mapping names a column of groups' },
		date: { type: 'string', help: 'day, such as 2026-09-14' },
		map: { type: 'string', help: 'JSON file that says which column is what; "preview" writes one to begin with' },
		mode: { type: 'string', help: 'paper (when left out), platform or hand' },
		codes: { type: 'string', help: 'CSV of two columns: what the file calls a student, and the student code' },
		'answer-map': { type: 'string', help: 'the answer map written beside the export' },
		add: { type: 'boolean', help: 'add to the responses that are there' },
		replace: { type: 'boolean', help: 'replace the responses that are there' },
		'dry-run': { type: 'boolean', help: 'only say what would be done' },
		rejected: { type: 'string', help: 'CSV file to write rejected rows to, with line and reason' },
	},
	run: (call) => pickAction(call, { preview, read }),
};

async function preview(call: Call, words: readonly string[]): Promise<Outcome> {
	const file = oneWord(words, 'FILE');
	const form = textOf(call, 'form');
	const version = versionOf(call);
	const answerMap = textIn(call, 'answer-map');
	const mapping = call.options.map === undefined ? undefined : (readJson(textOf(call, 'map')) as ResponseMapping);
	const store = await call.openStore(true);
	const shown = await previewResponses(store, openFile(file), {
		form,
		...(version === undefined ? {} : { version }),
		...(mapping === undefined ? {} : { mapping }),
		...(answerMap === undefined ? {} : { answerMap }),
	});
	const lines = [
		`${shown.encoding}, cells separated by ${nameDelimiter(shown.delimiter)}`,
		...shown.columns.map(
			({ number, heading, as, place }) =>
				`  column ${number} "${heading}": ${as}${place === undefined ? '' : ` ${place}`}`,
		),
		...shown.problems.map(({ path, message }) => `problem at ${path}: ${message}`),
		...shown.rows.map(
			({ line, student, answers }) =>
				`  line ${line} ${student}: ${answers.map(({ place, raw, reads }) => `${place} "${raw}" ${reads}`).join(', ')}`,
		),
		`mapping: ${JSON.stringify(shown.mapping)}`,
	];
	return { value: shown, lines, hasFaults: shown.problems.length > 0 };
}

async function read(call: Call, words: readonly string[]): Promise<Outcome> {
	const file = oneWord(words, 'FILE');
	const { group, add, replace, rejected: rejectedFile, 'dry-run': dryRun } = call.options;
	if (add === true && replace === true) throw new UsageError('expected --add or --replace, found both');
	const mapping = readJson(textOf(call, 'map')) as ResponseMapping;
	const codes = textIn(call, 'codes');
	const answerMap = textIn(call, 'answer-map');
	const version = versionOf(call);
	const [form, date] = [textOf(call, 'form'), textOf(call, 'date')];
	const mode = oneOf(call, 'mode', ['paper', 'platform', 'hand'] as const, 'paper');
	if (typeof rejectedFile === 'string') checkFree([rejectedFile], false);
	const store = await call.openStore(true);
	const rejected: RejectedRow[] = [];
	const reading: ResponseReading = {
		form,
		date,
		mode,
		mapping,
		onto: add === true ? 'add' : replace === true ? 'replace' : 'nothing',
		dryRun: dryRun === true,
		...(version === undefined ? {} : { version }),
		...(typeof group === 'string' ? { group } : {}),
		...(codes === undefined ? {} : { codes: readCodes(codes) }),
		...(answerMap === undefined ? {} : { answerMap }),
	};
	const report = await readResponses(store, openFile(file), reading, (row) => rejected.push(row)).finally(() => {
		// Also where the file as a whole is refused: that is when the list is wanted most.
		if (typeof rejectedFile !== 'string' || rejected.length === 0) return;
		const byLine = [...rejected].sort((a, b) => a.line - b.line);
		writeFiles([{ file: rejectedFile, content: writeRejected(byLine) }], false);
	});
	return { value: report, lines: describe(report), hasFaults: report.rejected.length > 0 };
}

function describe(report: ReadingReport): readonly string[] {
	const { dryRun, rows, students, answers, absent, unchanged, rejected, states, notes, sittings, columns } = report;
	const discarded = columns.filter(({ as }) => as === 'discarded').map(({ heading }) => `"${heading}"`);
	return [
		`${dryRun ? 'Would take' : 'Took'} ${answers} responses of ${students} students from ${rows} rows (${report.encoding}, ${nameDelimiter(report.delimiter)})`,
		...sittings.map(
			({ id, group, ...counts }) =>
				`  ${id ?? 'new sitting'}  ${group}  ${counts.students} students, ${counts.answers} responses`,
		),
		`  ${Object.entries(states)
			.map(([state, count]) => `${count} ${state}`)
			.join(', ')}`,
		...(discarded.length === 0 ? [] : [`Columns never kept: ${discarded.join(', ')}`]),
		...(absent.length === 0 ? [] : [`Without any response, left out as absent: ${absent.join(', ')}`]),
		...(unchanged === 0 ? [] : [`${unchanged} rows were in the bank already`]),
		...notes.map((note) => `note: ${note}`),
		...(rejected.length === 0
			? []
			: [`${rejected.length} ${rejected.length === 1 ? 'row was' : 'rows were'} rejected:`]),
		...rejected.map(({ line, message }) => `  line ${line}: ${message}`),
	];
}

/** Rejected rows as CSV. What else stood in the rows is not repeated: it may be personal. */
function writeRejected(rejected: readonly RejectedRow[]): string {
	return writeCsv(
		['line', 'code', 'message'],
		rejected.map(({ line, code, message }) => [line, code, message]),
	);
}

/** A file that is read in pieces. Throws FileRefusedError while reading. */
function openFile(file: string): ByteSource {
	return async function* () {
		try {
			yield* createReadStream(file, { highWaterMark: 262_144 });
		} catch (error) {
			if (error instanceof Error && 'code' in error && String(error.code).startsWith('E'))
				throw new FileRefusedError(file, error);
			throw error;
		}
	};
}

function textIn(call: Call, option: string): string | undefined {
	const file = call.options[option];
	return typeof file === 'string' ? readBytes(file).toString('utf8') : undefined;
}
