import type { Call, Command, Outcome } from './command.ts';
import { purgeTarget } from './sittings-command.ts';
import { oneWord, pickAction } from './words.ts';

/** Shows and purges everything about one student code. */
export const studentsCommand: Command = {
	name: 'students',
	usage: ['students show CODE [--json]', 'students purge CODE --confirm CODE [--backup FILE …]'],
	summary: 'shows or deletes everything about one student code, also in backups',
	options: {
		confirm: { type: 'string', help: 'the code once more: a purge cannot be undone' },
		backup: { type: 'string', multiple: true, help: 'a backup the bank does not know of' },
	},
	run: (call) => pickAction(call, { show, purge }),
};

async function show(call: Call, words: readonly string[]): Promise<Outcome> {
	const code = oneWord(words, 'CODE');
	const store = await call.openStore(true);
	const record = await store.readStudent(code);
	const lines = [
		`${code}: in ${record.groups.map(({ name }) => name).join(', ') || 'no group'}`,
		...record.sittings.flatMap(({ id, sitting, answers }) => [
			`${id}  ${sitting.date}  ${sitting.form} v${sitting.version}`,
			...answers.map(({ position, part, raw, scores }) => {
				const last = scores.at(-1)?.score;
				return `  ${part === undefined ? position : `${position}.${part}`}: "${raw}" ${last?.state} ${last?.points} of ${last?.maximum}`;
			}),
		]),
	];
	return { value: record, lines };
}

async function purge(call: Call, words: readonly string[]): Promise<Outcome> {
	const code = oneWord(words, 'CODE');
	return purgeTarget(call, code, { student: code });
}
