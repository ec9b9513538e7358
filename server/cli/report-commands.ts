import { join } from 'node:path';
import type { Report, ReportSection } from '../../item-bank/types.ts';
import { printReport } from '../print/report/report-pages.ts';
import { makeReport } from '../reporting.ts';
import { type DokLevels, readLevels } from '../results/alignment-sections.ts';
import type { ComparedGroups } from '../results/difference-section.ts';
import { writeReportCsv } from '../results/report-csv.ts';
import type { Call, Command, Outcome } from './command.ts';
import { checkFree, makeFolder, readBytes, writeFiles } from './files.ts';
import { UsageError } from './usage-error.ts';
import { listOf, oneOf } from './words.ts';

const shared = {
	own: { type: 'boolean', help: 'the class teacher’s own copy: student codes, nothing hidden' },
	framework: { type: 'string', help: 'whose standards are the rows; teks-math when left out' },
	edition: { type: 'string', help: 'edition of the framework; 2012 when left out' },
	cut: { type: 'string', multiple: true, help: 'points at which a decision is made' },
	blueprint: { type: 'string', help: 'a blueprint whose score bands are cuts too' },
	depth: { type: 'string', multiple: true, help: 'DOK of a standard, such as "6.3(D)=2"' },
	focal: { type: 'string', multiple: true, help: 'a class group to compare item by item; never kept' },
	'focal-codes': { type: 'string', help: 'file of student codes, one a line, in place of --focal; never kept' },
	reference: { type: 'string', multiple: true, help: 'a class group to compare with; all others when left out' },
} as const;

/** Says what sittings show, on the screen. */
export const analysisCommand: Command = {
	name: 'analysis',
	usage: [
		'analysis items SITTING … [--focal GROUP … or --focal-codes FILE] [--reference GROUP …]',
		'analysis item ITEM [SITTING …]',
		'analysis form SITTING … [--cut N …] [--blueprint B]',
		'analysis patterns SITTING …',
		'analysis groups SITTING … --own',
		'analysis coverage SITTING … [--depth STANDARD=DOK …]',
		'analysis compare SITTING …',
	],
	summary:
		'says what responses show: items, scores, wrong ideas they are consistent with, groups, coverage, forms side by side',
	options: shared,
	run: async (call) => {
		const [word, ...words] = call.words;
		const kind = pickKind(word, ['items', 'item', 'form', 'patterns', 'groups', 'coverage', 'compare']);
		const item = kind === 'item' ? words[0] : undefined;
		if (kind === 'item' && item === undefined) throw new UsageError('expected ITEM, found none');
		const sittings = kind === 'item' ? words.slice(1) : words;
		const report = await make(call, kind, sittings, item);
		return { value: report, lines: [...report.cautions, ...report.sections.flatMap(listSection)] };
	},
};

/** Writes reports on sittings as PDF and CSV. */
export const reportCommand: Command = {
	name: 'report',
	usage: [
		'report coverage|class|items|form|compare|pack --to DIR [--sitting S …] [--own] [--paper letter|a4] [--replace]',
	],
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
		const kind = pickKind(word, ['coverage', 'class', 'items', 'form', 'compare', 'pack']);
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

async function make(call: Call, kind: Report['kind'], sittings: readonly string[], item?: string): Promise<Report> {
	const { own, framework = 'teks-math', edition = '2012', blueprint } = call.options;
	const order = {
		cuts: readCuts(call),
		levels: readDepths(call),
		compared: readCompared(call),
		...(typeof blueprint === 'string' ? { blueprint } : {}),
	};
	const store = await call.openStore(true);
	return makeReport(store, {
		kind,
		sittings,
		copy: own === true ? 'own' : 'shared',
		lens: { framework: String(framework), edition: String(edition) },
		...order,
		...(item === undefined ? {} : { item }),
	});
}

function readCuts(call: Call): readonly number[] {
	return (listOf(call, 'cut') ?? []).map((text) => {
		const cut = Number(text);
		if (text.trim() !== '' && cut > 0 && cut <= 10_000) return cut;
		throw new UsageError(`expected a number of points after --cut, found "${text}"`);
	});
}

function readDepths(call: Call): DokLevels {
	const texts = listOf(call, 'depth') ?? [];
	const wrong = texts.find((text) => readLevels([text]).size === 0);
	if (wrong === undefined) return readLevels(texts);
	throw new UsageError(
		`expected a standard and a level from 1 to 4 such as "6.3(D)=2" after --depth, found "${wrong}"`,
	);
}

function readCompared(call: Call): ComparedGroups | undefined {
	const groups = listOf(call, 'focal') ?? [];
	const file = call.options['focal-codes'];
	const reference = new Set(listOf(call, 'reference') ?? []);
	if (typeof file === 'string' && groups.length > 0)
		throw new UsageError('expected --focal or --focal-codes, found both');
	const codes = typeof file === 'string' ? readBytes(file).toString('utf8').split(/\s+/).filter(Boolean) : [];
	const focal = new Set([...groups, ...codes]);
	if (focal.size > 0) return { focal, reference };
	if (reference.size > 0) throw new UsageError('expected --focal beside --reference, found none');
	return undefined;
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
