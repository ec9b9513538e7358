import type { Sitting, SittingEntry } from '../../item-bank/types.ts';
import type { PurgeTarget } from '../store/purge.ts';
import type { Call, Command, Outcome } from './command.ts';
import { UsageError } from './usage-error.ts';
import { listOf, noWords, numberOf, oneOf, oneWord, pickAction } from './words.ts';

/** Lists, shows, adds and rescores sittings. */
export const sittingsCommand: Command = {
	name: 'sittings',
	usage: [
		'sittings list',
		'sittings show SITTING',
		'sittings add --form F [--version N] --group G --date D [--mode paper|platform|hand] [--keep-until D]',
		'sittings rescore SITTING --version N --why TEXT',
		'sittings purge SITTING --confirm SITTING [--backup FILE …]',
	],
	summary: 'lists, shows and adds sittings, and scores one anew when a key was corrected',
	options: {
		form: { type: 'string', help: 'form that was sat' },
		version: { type: 'string', help: 'of the form; the newest when left out' },
		group: { type: 'string', help: 'class group' },
		date: { type: 'string', help: 'day, such as 2026-09-14' },
		mode: { type: 'string', help: 'paper (when left out), platform or hand' },
		'keep-until': { type: 'string', help: 'day after which the sitting is to be purged' },
		why: { type: 'string', help: 'why it is scored anew' },
		confirm: { type: 'string', help: 'the id once more: a purge cannot be undone' },
		backup: { type: 'string', multiple: true, help: 'a backup the bank does not know of' },
	},
	run: (call) => pickAction(call, { list, show, add, rescore, purge }),
};

async function list(call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	const store = await call.openStore(true);
	const entries = await store.sittings.list();
	return { value: entries, lines: entries.length > 0 ? entries.map(describe) : ['There are no sittings yet.'] };
}

async function show(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'SITTING');
	const store = await call.openStore(true);
	const grid = await store.responses.grid(id);
	const lines = grid.students.map(({ code, answers }) => {
		const points = answers.reduce((sum, { score }) => sum + score.points, 0);
		const most = answers.reduce((sum, { score }) => sum + score.maximum, 0);
		const shown = grid.places.map(({ position, part }) => {
			const answer = answers.find((each) => each.position === position && each.part === part);
			return answer === undefined ? '·' : answer.raw === '' ? '–' : answer.raw.slice(0, 12);
		});
		return answers.length === 0
			? `${code}  no responses`
			: `${code}  ${round(points)} of ${round(most)} points  ${shown.join(' | ')}`;
	});
	return { value: grid, lines: [describe(grid.entry), ...lines] };
}

async function add(call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	const { 'keep-until': keepUntil } = call.options;
	const [form, group, date] = (['form', 'group', 'date'] as const).map((name) => textOf(call, name));
	const mode = oneOf(call, 'mode', ['paper', 'platform', 'hand'] as const, 'paper');
	const store = await call.openStore(true);
	const { record } = await store.forms.get(form ?? '', versionOption(call));
	const sitting: Sitting = {
		form: record.id,
		version: record.version,
		group: group ?? '',
		date: date ?? '',
		mode,
		...(typeof keepUntil === 'string' ? { keepUntil } : {}),
	};
	const entry = await store.sittings.add({ sitting });
	return { value: entry, lines: [describe(entry)] };
}

async function rescore(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'SITTING');
	const version = numberOf(call, 'version', { least: 1, most: 1_000_000 });
	const why = textOf(call, 'why');
	const store = await call.openStore(true);
	const report = await store.responses.rescore(id, { version, why });
	const lines = [
		`${id}: scoring ${report.scoring} by version ${version} of the form; ${report.changed.length} scores differ, ${report.kept} came as points and stay`,
		...report.changed.map(
			({ code, position, part, before, after }) =>
				`  ${code} at ${part === undefined ? position : `${position}.${part}`}: ${before.state} ${before.points} becomes ${after.state} ${after.points}`,
		),
	];
	return { value: report, lines };
}

async function purge(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'SITTING');
	return purgeTarget(call, id, { sitting: id });
}

/** Purges what --confirm names once more. Throws UsageError where it does not. */
export async function purgeTarget(call: Call, name: string, target: PurgeTarget): Promise<Outcome> {
	if (call.options.confirm !== name) throw new UsageError(`expected --confirm ${name}: a purge cannot be undone`);
	const store = await call.openStore(true);
	const report = await store.purge(target, listOf(call, 'backup') ?? []);
	const lines = [
		`Deleted: ${report.sittings} sittings touched, ${report.students} students, ${report.answers} responses`,
		...report.places.map(({ file, found, why }) => `  ${file}: ${found}${why === undefined ? '' : ` (${why})`}`),
	];
	return { value: report, lines, hasFaults: report.places.some(({ found }) => found === 'refused') };
}

/** A sitting in one line. */
export function describe({ id, sitting, students, answers, unrated, scoring, scoredAs }: SittingEntry): string {
	const notes = [
		...(sitting.simulated === true ? ['SIMULATED'] : []),
		...(unrated > 0 ? [`${unrated} unrated`] : []),
		...(scoring > 1 ? [`scoring ${scoring} by version ${scoredAs}`] : []),
		...(sitting.keepUntil === undefined ? [] : [`keep until ${sitting.keepUntil}`]),
	];
	const tail = notes.length === 0 ? '' : `  [${notes.join(', ')}]`;
	return `${id}  ${sitting.date}  ${sitting.form} v${sitting.version}  ${sitting.group}  ${sitting.mode}  ${students} students, ${answers} responses${tail}`;
}

/** Text typed after an option. Throws UsageError when it is missing. */
export function textOf(call: Call, option: string): string {
	const typed = call.options[option];
	if (typeof typed !== 'string' || typed === '') throw new UsageError(`expected --${option}, found none`);
	return typed;
}

/** The version named with --version, if any. Throws UsageError for text that is no version. */
function versionOption(call: Call): number | undefined {
	return call.options.version === undefined ? undefined : numberOf(call, 'version', { least: 1, most: 1_000_000 });
}

function round(points: number): number {
	return Math.round(points * 100) / 100;
}
