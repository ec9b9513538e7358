import { reviewForm } from '../../item-bank/checks/review-form.ts';
import type { Form } from '../../item-bank/types.ts';
import { finderOf } from '../planning.ts';
import type { NewForm } from '../store/form-store.ts';
import { build, compare, explain, give, swap } from './build-actions.ts';
import type { Call, Command, Outcome } from './command.ts';
import { readJson } from './files.ts';
import { listItem, writeNote } from './item-text.ts';
import { noWords, oneWord, pickAction, versionOf } from './words.ts';

/** Lists, shows and creates forms. */
export const formsCommand: Command = {
	name: 'forms',
	usage: [
		'forms list',
		'forms show FORM [--version N]',
		'forms create FILE',
		'forms review FORM [--version N]',
		'forms build --blueprint ID [--version N] [--count N] [--seed S] [--like FORM] [--title T …] [--make-missing] [--keep [--id ID …]]',
		'forms explain --blueprint ID [--version N] [--count N] [--seed S]',
		'forms compare FORM FORM',
		'forms swap FORM --position N [--blueprint ID] [--beside FORM …]',
		'forms swap FORM --position N --take ITEM',
		'forms give FORM --group ID --date D [--version N]',
	],
	summary: 'lists, shows, creates, builds and compares forms, and records when they were given',
	options: {
		version: { type: 'string', help: 'of the form, or of the blueprint to build by; the newest when left out' },
		blueprint: { type: 'string', help: 'the plan to build by, or to keep when swapping' },
		count: { type: 'string', help: 'how many forms, 1 (when left out) to 4' },
		seed: { type: 'string', help: 'the same seed gives the same forms; 1 when left out' },
		like: { type: 'string', help: 'a form the new ones are to be like, as for a retake' },
		keep: { type: 'boolean', help: 'keep the forms in the bank' },
		'make-missing': { type: 'boolean', help: 'make what the bank lacks for the plan from families, and try again' },
		id: { type: 'string', multiple: true, help: 'id of a kept form; once for each form' },
		title: { type: 'string', multiple: true, help: 'title of a form; once for each form' },
		position: { type: 'string', help: 'place on the form, 1 for the first item' },
		beside: { type: 'string', multiple: true, help: 'a form whose items are not offered, such as the parallel one' },
		take: { type: 'string', help: 'item to put there; makes a new version of the form' },
		group: { type: 'string', help: 'class group' },
		date: { type: 'string', help: 'day, such as 2026-09-14' },
	},
	run: (call) => pickAction(call, { list, show, create, review, build, explain, compare, swap, give }),
};

async function list(call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	const store = await call.openStore(true);
	const forms = await store.forms.list();
	const lines = forms.map(
		({ id, version, title, items, givings }) =>
			`${id} v${version}  ${title}  (${items} items, given ${givings} time${givings === 1 ? '' : 's'})`,
	);
	return { value: forms, lines: lines.length > 0 ? lines : ['There are no forms yet.'] };
}

async function show(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'FORM');
	const version = versionOf(call);
	const store = await call.openStore(true);
	const details = await store.forms.get(id, version);
	const { record, items, givings } = details;
	let position = 0;
	const sections = record.form.sections.flatMap((section) => [
		section.title,
		...section.items.flatMap((entry) => {
			const item = items.find((each) => each.id === entry.item && each.version === entry.version);
			position += 1;
			return item ? [`  ${position}. ${listItem(item)}`] : [];
		}),
	]);
	const lines = [
		`${record.id} version ${record.version}: ${record.form.title} (grid ${record.form.gridProfile})`,
		...sections,
		...givings.map(({ version, group, date }) => `version ${version} was given to ${group} on ${date}`),
	];
	return { value: details, lines };
}

async function create(call: Call, words: readonly string[]): Promise<Outcome> {
	const document = readJson(oneWord(words, 'FILE'));
	const isWrapped = typeof document === 'object' && document !== null && 'form' in document;
	const store = await call.openStore(false);
	const record = await store.forms.create(isWrapped ? (document as NewForm) : { form: document as Form });
	return { value: record, lines: [`${record.id} version ${record.version}: ${record.form.title}`] };
}

/** What the rules of item writing find between the items of a form. */
async function review(call: Call, words: readonly string[]): Promise<Outcome> {
	const id = oneWord(words, 'FORM');
	const version = versionOf(call);
	const store = await call.openStore(true);
	const { record, items } = await store.forms.get(id, version);
	const notes = reviewForm(record.form, finderOf(items));
	const lines = notes.map((note) => `${id}${writeNote(note)}`);
	return { value: notes, lines: lines.length > 0 ? lines : ['nothing to mend'] };
}
