import { blueprintOf } from '../../item-bank/forms/blueprint-of.ts';
import type { Blueprint, BlueprintEntry } from '../../item-bank/types.ts';
import { finderOf, mainScope } from '../planning.ts';
import type { NewBlueprint } from '../store/blueprint-store.ts';
import { examineBlueprint } from '../store/content-rules.ts';
import type { Call, Command, Outcome } from './command.ts';
import { readJson } from './files.ts';
import { noWords, oneWord, pickAction, versionOf } from './words.ts';

/** Lists, shows, checks and adds blueprints, and reads one off a form. */
export const blueprintsCommand: Command = {
	name: 'blueprints',
	usage: [
		'blueprints list',
		'blueprints show BLUEPRINT [--version N]',
		'blueprints check FILE',
		'blueprints add FILE',
		'blueprints of FORM [--version N]',
	],
	summary: 'lists, shows, checks and adds plans for forms, and reads one off a form',
	options: { version: { type: 'string', help: 'the newest when left out' } },
	run: (call) => pickAction(call, { list, show, check, add, of }),
};

async function list(call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	const store = await call.openStore(true);
	const blueprints = await store.blueprints.list();
	const lines = blueprints.map(listBlueprint);
	return { value: blueprints, lines: lines.length > 0 ? lines : ['There are no blueprints yet.'] };
}

async function show(call: Call, words: readonly string[]): Promise<Outcome> {
	const store = await call.openStore(true);
	const entry = await store.blueprints.get(oneWord(words, 'BLUEPRINT'), versionOf(call));
	return { value: entry, lines: [listBlueprint(entry), ...describeBlueprint(entry.blueprint)] };
}

async function check(_call: Call, words: readonly string[]): Promise<Outcome> {
	const { blueprint } = readBlueprint(oneWord(words, 'FILE'));
	const problems = examineBlueprint(blueprint);
	const lines = problems.map(({ path, message }) => `${path === '' ? 'here' : path}: ${message}`);
	return { value: problems, lines: lines.length > 0 ? lines : ['nothing to mend'], hasFaults: lines.length > 0 };
}

async function add(call: Call, words: readonly string[]): Promise<Outcome> {
	const document = readBlueprint(oneWord(words, 'FILE'));
	const store = await call.openStore(false);
	const entry = await store.blueprints.create(document);
	return { value: entry, lines: [listBlueprint(entry)] };
}

async function of(call: Call, words: readonly string[]): Promise<Outcome> {
	const store = await call.openStore(true);
	const { record, items } = await store.forms.get(oneWord(words, 'FORM'), versionOf(call));
	const blueprint = blueprintOf(record.form, finderOf(items), mainScope(items));
	return { value: blueprint, lines: describeBlueprint(blueprint) };
}

/** A file with a blueprint, or with an id beside it. */
function readBlueprint(file: string): NewBlueprint {
	const document = readJson(file);
	const isWrapped = typeof document === 'object' && document !== null && 'blueprint' in document;
	return isWrapped ? (document as NewBlueprint) : { blueprint: document as Blueprint };
}

function listBlueprint({ id, version, blueprint }: BlueprintEntry): string {
	return `${id} v${version}  ${blueprint.title}  (${writeRange(blueprint.items)} items)`;
}

/** What a blueprint asks, a line each. */
function describeBlueprint(blueprint: Blueprint): readonly string[] {
	const {
		framework,
		edition,
		gridProfile,
		items,
		points,
		cells,
		dok = [],
		kinds = [],
		roles = [],
		sections,
	} = blueprint;
	return [
		...(blueprint.purpose === undefined ? [] : [blueprint.purpose]),
		`${framework} ${edition}, grid ${gridProfile}: ${writeRange(items)} items${points ? `, ${writeRange(points)} points` : ''}`,
		...cells.map(
			({ standard, model, ...ask }) => `  ${standard ?? 'any standard'}, ${model ?? 'any model'}: ${writeShare(ask)}`,
		),
		...dok.map(({ dok: level, ...ask }) => `  DOK ${level}: ${writeShare(ask)}`),
		...kinds.map(({ kind, ...ask }) => `  ${kind}: ${writeShare(ask)}`),
		...roles.map(({ role, ...ask }) => `  ${role} in a story or table: ${writeShare(ask)}`),
		...sections.map((section) => `  section “${section.title}”`),
	];
}

type Range = Blueprint['items'];

function writeShare({ items, points }: { readonly items?: Range; readonly points?: Range }): string {
	return [...(items ? [`${writeRange(items)} items`] : []), ...(points ? [`${writeRange(points)} points`] : [])].join(
		', ',
	);
}

function writeRange({ min, max }: Range): string {
	if (min !== undefined && max !== undefined) return min === max ? String(min) : `${min} to ${max}`;
	return min !== undefined ? `at least ${min}` : `at most ${max ?? 'any number of'}`;
}
