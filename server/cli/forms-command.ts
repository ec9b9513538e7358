import type { Form } from '../../item-bank/types.ts';
import type { NewForm } from '../store/form-store.ts';
import type { Call, Command, Outcome } from './command.ts';
import { readJson } from './files.ts';
import { listItem } from './item-text.ts';
import { noWords, oneWord, pickAction, versionOf } from './words.ts';

/** Lists, shows and creates forms. */
export const formsCommand: Command = {
	name: 'forms',
	usage: ['forms list', 'forms show FORM [--version N]', 'forms create FILE'],
	summary: 'lists, shows and creates forms',
	options: { version: { type: 'string', help: 'the newest when left out' } },
	run: (call) => pickAction(call, { list, show, create }),
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
