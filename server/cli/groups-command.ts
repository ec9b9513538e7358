import type { Group } from '../../item-bank/types.ts';
import type { NewGroup } from '../store/group-store.ts';
import type { Call, Command, Outcome } from './command.ts';
import { readJson } from './files.ts';
import { noWords, oneWord, pickAction } from './words.ts';

/** Lists and adds class groups. */
export const groupsCommand: Command = {
	name: 'groups',
	usage: ['groups list', 'groups add FILE'],
	summary: 'lists and adds class groups (student codes, never names)',
	options: {},
	run: (call) => pickAction(call, { list, add }),
};

async function list(call: Call, words: readonly string[]): Promise<Outcome> {
	noWords(words);
	const store = await call.openStore(true);
	const groups = await store.groups.list();
	const lines = groups.map(({ id, group }) => `${id}  ${group.name}  (${group.studentCodes.length} students)`);
	return { value: groups, lines: lines.length > 0 ? lines : ['There are no groups yet.'] };
}

async function add(call: Call, words: readonly string[]): Promise<Outcome> {
	const document = readJson(oneWord(words, 'FILE'));
	const isWrapped = typeof document === 'object' && document !== null && 'group' in document;
	const store = await call.openStore(false);
	const entry = await store.groups.add(isWrapped ? (document as NewGroup) : { group: document as Group });
	return { value: entry, lines: [`${entry.id}  ${entry.group.name}  (${entry.group.studentCodes.length} students)`] };
}
