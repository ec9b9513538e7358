import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Problem } from '../../item-bank/problem.ts';
import { databaseName } from '../store/data-folder.ts';
import { openStore, type Store } from '../store/open-store.ts';
import type { Call, Command, OptionValues, World } from './command.ts';
import { commandNames, commands } from './commands.ts';
import { findNearest, UsageError } from './usage-error.ts';

/** There is no bank in the folder. */
export class BankMissingError extends Error {
	readonly code = 'bank-missing';
	readonly folder: string;

	constructor(folder: string) {
		super(
			`expected a bank in "${folder}", found none: begin one with serve, demo or items add, or name another with --data`,
		);
		this.name = 'BankMissingError';
		this.folder = folder;
	}
}

const everywhere = {
	data: { type: 'string' },
	json: { type: 'boolean' },
	help: { type: 'boolean', short: 'h' },
} as const;

/**
 * Runs one command line, the words after the program's name. Returns the exit code: 0 done, 1 refused or faults found, 2 not
 * understood. Faults of our own are thrown.
 */
export async function runCommand(words: readonly string[], world: World): Promise<number> {
	const isJson = words.includes('--json');
	let store: Store | undefined;
	try {
		const command = findCommand(words);
		const { options, positionals } = readOptions(command, words);
		const dataFolder = typeof options.data === 'string' ? options.data : world.dataFolder;
		const call: Call = {
			world,
			dataFolder,
			isJson,
			words: options.help === true ? [command.name] : positionals,
			options: ownOptions(command, options),
			openStore: async (mustExist) => {
				if (mustExist && !existsSync(join(dataFolder, databaseName))) throw new BankMissingError(dataFolder);
				store = await openStore(dataFolder);
				return store;
			},
		};
		const wanted = options.help === true ? commands.find(({ name }) => name === 'help') : command;
		const { value, lines, hasFaults = false } = await (wanted ?? command).run(call);
		if (isJson) world.print(JSON.stringify(value, null, '\t'));
		else for (const line of lines) world.print(line);
		return hasFaults ? 1 : 0;
	} catch (error) {
		return tellError(error, world, isJson);
	} finally {
		await store?.close();
	}
}

function findCommand(words: readonly string[]): Command {
	const { positionals } = parseArgs({
		args: joinNumbers(words),
		allowPositionals: true,
		strict: false,
		options: everywhere,
	});
	const [name] = positionals;
	const command = commands.find((each) => each.name === (name ?? 'help'));
	if (command) return command;
	const near = findNearest(name ?? '', commandNames);
	const hint = near === undefined ? '' : `; did you mean ${near}?`;
	throw new UsageError(`expected a command (${commandNames.join(', ')}), found "${name}"${hint}`);
}

function readOptions(
	command: Command,
	words: readonly string[],
): { options: OptionValues; positionals: readonly string[] } {
	const own = Object.entries(command.options).map(([name, { type, multiple }]) => [
		name,
		{ type, multiple: multiple ?? false },
	]);
	const options = { ...everywhere, ...Object.fromEntries(own) };
	try {
		const { values, positionals } = parseArgs({
			args: joinNumbers(words),
			allowPositionals: true,
			strict: true,
			options,
		});
		return { options: values, positionals: positionals.slice(1) };
	} catch (error) {
		if (!(error instanceof TypeError && 'code' in error)) throw error;
		const [, typed] = /'--?([^' =]+)/.exec(error.message) ?? [];
		const isUnknown = error.code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION' && typed !== undefined;
		const near = isUnknown ? findNearest(typed, Object.keys(options)) : undefined;
		const hint = near === undefined ? '' : `; did you mean --${near}?`;
		throw new UsageError(
			isUnknown
				? `expected an option of ${command.name}, found "--${typed}"${hint}`
				: (error.message.split('\n')[0] ?? ''),
		);
	}
}

/** Lets "--answer -5" stand for "--answer=-5": a negative number is never an option. */
function joinNumbers(words: readonly string[]): string[] {
	return words.flatMap((word, index) => {
		const next = words[index + 1];
		if (/^--[a-z]/.test(word) && next !== undefined && /^-\d+$/.test(next)) return [`${word}=${next}`];
		const before = words[index - 1];
		return before !== undefined && /^--[a-z]/.test(before) && /^-\d+$/.test(word) ? [] : [word];
	});
}

function ownOptions(command: Command, options: OptionValues): OptionValues {
	return Object.fromEntries(Object.entries(options).filter(([name]) => Object.hasOwn(command.options, name)));
}

function tellError(error: unknown, world: World, isJson: boolean): number {
	if (!(error instanceof Error) || !isOurs(error)) throw error;
	const problems = 'problems' in error && Array.isArray(error.problems) ? (error.problems as readonly Problem[]) : [];
	if (isJson) {
		const listed = problems.map(({ code, path, message }) => ({ code, path, message }));
		world.printError(JSON.stringify({ code: error.code, message: error.message, problems: listed }, null, '\t'));
	} else {
		world.printError(error.message);
		for (const { path, message } of problems) world.printError(`  ${path === '' ? 'here' : path}: ${message}`);
		if (error instanceof UsageError) world.printError('Say "help" or "help COMMAND" for more.');
	}
	return error instanceof UsageError ? 2 : 1;
}

/** Errors with a code of this project; others are faults and keep their stack. */
function isOurs(error: Error): error is Error & { readonly code: string } {
	return (
		'code' in error && typeof error.code === 'string' && /^[a-z][a-z-]+$/.test(error.code) && error.code !== 'invariant'
	);
}
