import { join } from 'node:path';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { printReport } from '../print/report/report-pages.ts';
import { makeReport } from '../reporting.ts';
import { writeReportCsv } from '../results/report-csv.ts';
import type { Call, Command, Outcome } from './command.ts';
import { checkFree, makeFolder, writeFiles } from './files.ts';
import { UsageError } from './usage-error.ts';
import { listOf, oneOf } from './words.ts';

const shared = {
	own: { type: 'boolean', help: 'the class teacher’s own copy: student codes, nothing hidden' },
	framework: { type: 'string', help: 'whose standards are the rows; teks-math when left out' },
	edition: { type: 'string', help: 'edition of the framework; 2012 when left out' },
} as const;

/** Says what sittings show, on the screen. */
export const analysisCommand: Command = {
	name: 'analysis',
	usage: [
		'analysis items SITTING …',
		'analysis form SITTING …',
		'analysis patterns SITTING …',
		'analysis groups SITTING … --own',
		'analysis coverage SITTING …',
	],
	summary: 'says what responses show: items, scores, wrong ideas they are consistent with, groups',
	options: shared,
	run: async (call) => {
		const [kind, ...sittings] = call.words;
		const report = await make(call, pickKind(kind, ['items', 'form', 'patterns', 'groups', 'coverage']), sittings);
		return { value: report, lines: [...report.cautions, ...report.sections.flatMap(listSection)] };
	},
};

/** Writes reports on sittings as PDF and CSV. */
export const reportCommand: Command = {
	name: 'report',
	usage: ['report coverage|class|items|pack --to DIR [--sitting S …] [--own] [--paper letter|a4] [--replace]'],
	summary: 'writes a report on sittings as PDF and CSV',
	options: {
		...shared,
		to: { type: 'string', help: 'folder for the files' },
		sitting: { type: 'string', multiple: true, help: 'a sitting; all when left out' },
		paper: { type: 'string', help: 'letter (when left out) or a4' },
		replace: { type: 'boolean', help: 'overwrite files of these names' },
	},
	run: async (call): Promise<Outcome> => {
		const [word, ...others] = call.words;
		if (others.length > 0)
			throw new UsageError(`expected nothing more, found "${others[0]}": name sittings with --sitting`);
		const kind = pickKind(word, ['coverage', 'class', 'items', 'pack']);
		const { to, replace } = call.options;
		if (typeof to !== 'string' || to === '') throw new UsageError('expected --to DIR, found none');
		const paper = oneOf(call, 'paper', ['letter', 'a4'] as const, 'letter');
		const report = await make(call, kind, listOf(call, 'sitting') ?? []);
		const name = join(to, `${kind}-${report.copy}`);
		const files = [
			{ file: `${name}.csv`, content: writeReportCsv(report) },
			{ file: `${name}.pdf`, content: await printReport(report, paper, call.world.signal) },
		];
		checkFree(
			files.map(({ file }) => file),
			replace === true,
		);
		makeFolder(to);
		writeFiles(files, replace === true);
		return {
			value: { files: files.map(({ file, content }) => ({ file, bytes: content.length })), sittings: report.sittings },
			lines: [...files.map(({ file }) => file), ...report.cautions.map((caution) => `note: ${caution}`)],
		};
	},
};

function pickKind<Kind extends Report['kind']>(word: string | undefined, kinds: readonly Kind[]): Kind {
	const kind = kinds.find((each) => each === word);
	if (kind !== undefined) return kind;
	throw new UsageError(`expected ${kinds.join(', ')}, found ${word === undefined ? 'nothing' : `"${word}"`}`);
}

async function make(call: Call, kind: Report['kind'], sittings: readonly string[]): Promise<Report> {
	const { own, framework = 'teks-math', edition = '2012' } = call.options;
	const store = await call.openStore(true);
	return makeReport(store, {
		kind,
		sittings,
		copy: own === true ? 'own' : 'shared',
		lens: { framework: String(framework), edition: String(edition) },
	});
}

function listSection({ title, notes, table }: ReportSection): readonly string[] {
	const rows =
		table === undefined ? [] : [table.headings, ...table.rows.map((row) => row.map((cell) => String(cell ?? '–')))];
	const widths = (table?.headings ?? []).map((_unused, column) =>
		Math.max(...rows.map((row) => row[column]?.length ?? 0)),
	);
	return [
		'',
		`== ${title}`,
		...notes,
		...rows.map((row) =>
			row
				.map((cell, column) => cell.padEnd(widths[column] ?? 0))
				.join('  ')
				.trimEnd(),
		),
	];
}
