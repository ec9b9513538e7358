import { blueprintsCommand } from './blueprints-command.ts';
import type { Command, Outcome } from './command.ts';
import { exportCommand } from './export-command.ts';
import { familiesCommand } from './families-command.ts';
import { formsCommand } from './forms-command.ts';
import { groupsCommand } from './groups-command.ts';
import { itemsCommand } from './items-command.ts';
import { patternsCommand } from './patterns-command.ts';
import { printCommand } from './print-command.ts';
import { serveCommand } from './serve-command.ts';
import { backupCommand, demoCommand, restoreCommand } from './storage-commands.ts';
import { validateCommand } from './validate-command.ts';

const helpCommand: Command = {
	name: 'help',
	usage: ['help [COMMAND]'],
	summary: 'says what the commands are',
	options: {},
	run: async ({ words }): Promise<Outcome> => {
		const command = commands.find(({ name }) => name === words[0]);
		const lines = command ? describeCommand(command) : describeAll();
		return { value: { help: lines }, lines };
	},
};

/** Every command, in the order help lists them. */
export const commands: readonly Command[] = [
	serveCommand,
	demoCommand,
	itemsCommand,
	familiesCommand,
	formsCommand,
	groupsCommand,
	blueprintsCommand,
	patternsCommand,
	exportCommand,
	printCommand,
	validateCommand,
	backupCommand,
	restoreCommand,
	helpCommand,
];

/** Names of all commands. */
export const commandNames: readonly string[] = commands.map(({ name }) => name);

/** Help on one command. */
export function describeCommand({ usage, summary, options }: Command): readonly string[] {
	const listed = Object.entries(options).map(([name, { help }]) => `  --${name.padEnd(10)} ${help}`);
	return [`${summary.charAt(0).toUpperCase()}${summary.slice(1)}.`, ...usage.map((line) => `  ${line}`), ...listed];
}

function describeAll(): readonly string[] {
	return [
		'Usage: npm run zeropair -- COMMAND …',
		...commands.map(({ name, summary }) => `  ${name.padEnd(9)} ${summary}`),
		'Everywhere: --data DIR names the folder of the bank, --json answers in JSON.',
		'help COMMAND says more. Exit codes: 0 done, 1 refused or faults found, 2 not understood.',
	];
}
