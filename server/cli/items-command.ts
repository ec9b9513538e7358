import type { ItemRecord } from '../../item-bank/items/record.ts';
import { resolveCode } from '../../item-bank/standards/code.ts';
import type { Item, ItemFindings, ItemPage, ItemQuery } from '../../item-bank/types.ts';
import { findOut } from '../item-findings.ts';
import { compileSchema } from '../json-schemas.ts';
import { describeErrors } from '../shape-problems.ts';
import type { NewItem } from '../store/item-store.ts';
import type { Call, Command, Outcome } from './command.ts';
import { readJson } from './files.ts';
import { describeItem, listItem, writeNote } from './item-text.ts';
import { make, variants } from './making-actions.ts';
import { UsageError } from './usage-error.ts';
import { oneWord, pickAction, versionOf } from './words.ts';

const validateQuery = compileSchema({ $ref: 'item-query.schema.json' }, true);

/** Finds, shows, adds, approves and retires items. */
export const itemsCommand: Command = {
	name: 'items',
	usage: [
		'items find [WORDS] [--code CODE --framework ID --edition E] [--model M] [--status S] …',
		'items show ITEM [--version N]',
		'items add FILE',
		'items check ITEM|FILE [--version N]',
		'items make --family F [--count N] [--seed S] [--standard CODE] [--with NAME=VALUE …] [--approve] [--dry-run]',
		'items variants ITEM [--count N] [--seed S] [--approve] [--dry-run]',
		'items approve ITEM [--version N]',
		'items retire ITEM [--version N]',
	],
	summary: 'finds, shows, adds, checks, makes, approves and retires items',
	options: {
		framework: { type: 'string', help: 'framework of the code, such as ccss-m' },
		edition: { type: 'string', help: 'its edition, such as 2010' },
		code: { type: 'string', help: 'standard, in any known spelling' },
		below: { type: 'boolean', help: 'also the standards below the code' },
		alignment: { type: 'string', help: 'lead (as the board counts) or any' },
		model: { type: 'string', multiple: true, help: 'symbols, counters, number-line, story or table; may be repeated' },
		kind: { type: 'string', multiple: true, help: 'choice, multiple-choice or gridded' },
		dok: { type: 'string', multiple: true, help: '1 to 4' },
		status: { type: 'string', multiple: true, help: 'draft, approved or retired' },
		points: { type: 'string', multiple: true, help: '1 to 10' },
		setting: { type: 'string', multiple: true, help: 'where the story plays, such as mine-lift' },
		role: { type: 'string', multiple: true, help: 'position, change, total-distance or comparison' },
		sort: { type: 'string', help: 'added, name or changed' },
		limit: { type: 'string', help: 'at most this many, 1 to 200; 25 when left out' },
		cursor: { type: 'string', help: 'next of the page before' },
		version: { type: 'string', help: 'the newest when left out' },
		family: { type: 'string', help: 'family to make items of; "families list" names them' },
		count: { type: 'string', help: 'how many to make, 1 when left out' },
		seed: { type: 'string', help: 'the same seed makes the same items; 1 when left out' },
		standard: { type: 'string', help: 'code that every item made must carry' },
		with: { type: 'string', multiple: true, help: 'NAME=VALUE asks something of the family; may be repeated' },
		approve: { type: 'boolean', help: 'approve what is made' },
		'dry-run': { type: 'boolean', help: 'make and show, keep nothing' },
	},
	run: (call) => pickAction(call, { find, show, add, check, make, variants, approve, retire }),
};

async function find(call: Call, words: readonly string[]): Promise<Outcome> {
	const query = readQuery(call, words);
	const store = await call.openStore(true);
	const page = await store.items.find(query);
	return { value: page, lines: listPage(page) };
}

async function show(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'ITEM');
	const version = versionOf(call);
	const store = await call.openStore(true);
	const record = await store.items.get(id, version);
	return { value: record, lines: describeItem(record, findOut(record.item)) };
}

async function add(call: Call, words: readonly string[]): Promise<Outcome> {
	const document = readJson(oneWord(words, 'FILE'));
	const entries = (Array.isArray(document) ? document : [document]).map(readEntry);
	const store = await call.openStore(false);
	const records = await store.items.createMany(entries);
	const lines = records.map(({ id, item }) => {
		const { length } = findOut(item).problems;
		return `${id}  draft  ${item.name}${length > 0 ? `  (${length} to mend before approval)` : ''}`;
	});
	return { value: records, lines };
}

/** What the rules of item writing say of an item of the bank, or of the items in a file. */
async function check(call: Call, words: readonly string[]): Promise<Outcome> {
	const named = oneWord(words, 'ITEM or FILE');
	const items = named.endsWith('.json') ? readItems(named) : [await readKept(call, named)];
	const value = items.map(({ id, item }) => ({ id, notes: findOut(item).notes ?? findOut(item).problems.map(asStop) }));
	const lines = value.flatMap(({ id, notes }) => notes.map((note) => `${id}${writeNote(note)}`));
	const hasFaults = value.some(({ notes }) => notes.some(({ severity }) => severity === 'stop'));
	return { value, lines: lines.length > 0 ? lines : ['nothing to mend'], hasFaults };
}

async function readKept(call: Call, id: string): Promise<NewItem> {
	const store = await call.openStore(true);
	return store.items.get(id, versionOf(call));
}

function readItems(file: string): readonly NewItem[] {
	const document = readJson(file);
	return (Array.isArray(document) ? document : [document])
		.map(readEntry)
		.map((entry, index) => ({ id: `item ${index + 1}`, ...entry }));
}

type Note = NonNullable<ItemFindings['notes']>[number];

function asStop(problem: ItemFindings['problems'][number]): Note {
	return { severity: 'stop', ...problem, guideline: { source: 'the shape of an item' } };
}

async function approve(call: Call, words: readonly string[]): Promise<Outcome> {
	return changeStatus(call, words, 'approve');
}

async function retire(call: Call, words: readonly string[]): Promise<Outcome> {
	return changeStatus(call, words, 'retire');
}

async function changeStatus(call: Call, words: readonly string[], step: 'approve' | 'retire'): Promise<Outcome> {
	const id = oneWord(words, 'ITEM');
	const named = versionOf(call);
	const store = await call.openStore(true);
	const version = named ?? (await store.items.get(id)).version;
	const record: ItemRecord = await store.items[step](id, version);
	return { value: record, lines: [`${record.id} version ${record.version} is ${record.status}.`] };
}

/** An item as it stands, or one with the id it shall have. What does not fit is left for the store to refuse. */
function readEntry(document: unknown): NewItem {
	const isWrapped = typeof document === 'object' && document !== null && 'item' in document;
	return isWrapped ? (document as NewItem) : { item: document as Item };
}

function readQuery(call: Call, words: readonly string[]): ItemQuery {
	const {
		version: _version,
		family,
		count,
		seed,
		standard,
		with: asked,
		approve,
		'dry-run': dryRun,
		...options
	} = call.options;
	const foreign = Object.entries({ family, count, seed, standard, with: asked, approve, 'dry-run': dryRun }).find(
		([, value]) => value !== undefined,
	);
	if (foreign) throw new UsageError(`expected options of "items find", found "--${foreign[0]}"`);
	const query = { ...options, ...(words.length > 0 ? { text: words.join(' ') } : {}), ...findFrameworkOf(options) };
	if (!validateQuery(query)) {
		const [problem] = describeErrors(validateQuery.errors ?? [], query);
		throw new UsageError(problem?.message ?? 'this cannot be searched for');
	}
	return query as ItemQuery;
}

/** Framework and edition of a code typed without them, where only one can be meant. */
function findFrameworkOf(options: Call['options']): Partial<ItemQuery> {
	const { code, framework } = options;
	if (typeof code !== 'string' || framework !== undefined) return {};
	const meant = resolveCode(code);
	const [only] = meant;
	if (only && meant.length === 1) return only;
	const choices = meant.map((key) => `--framework ${key.framework} --edition ${key.edition}`).join(', or ');
	throw new UsageError(
		only
			? `"${code}" is a code of several frameworks: add ${choices}`
			: `expected a code of some framework, found "${code}"`,
	);
}

function listPage({ items, total, next }: ItemPage): readonly string[] {
	const lines = items.map(listItem);
	if (total === 0) return ['Nothing fits.'];
	const rest = next === undefined ? '' : `, more with --cursor ${next}`;
	return [...lines, `${items.length} of ${total}${rest}`];
}
