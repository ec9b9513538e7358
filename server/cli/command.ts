import type { Store } from '../store/open-store.ts';

/** The world around a command: where it writes, and when it has to give up. */
export interface World {
	/** One line of the result. */
	readonly print: (line: string) => void;
	/** One line of an error or of progress. */
	readonly printError: (line: string) => void;
	/** Given when the person at the keyboard stops the command. */
	readonly signal: AbortSignal;
	/** Folder of the bank when the command line names none. */
	readonly dataFolder: string;
}

/** Values of a command's own options, as typed. */
export type OptionValues = Readonly<Record<string, string | boolean | readonly (string | boolean)[] | undefined>>;

/** One call of a command. */
export interface Call {
	readonly world: World;
	readonly dataFolder: string;
	readonly isJson: boolean;
	/** What stands after the name of the command. */
	readonly words: readonly string[];
	readonly options: OptionValues;
	/** Opens the bank; the runner closes it. mustExist: refuse a folder without a bank instead of beginning one. */
	openStore(mustExist: boolean): Promise<Store>;
}

/** What a command answers: lines for people, or the value itself with --json. */
export interface Outcome {
	readonly value: unknown;
	readonly lines: readonly string[];
	/** Whether what was looked at has faults; the exit code is then 1. */
	readonly hasFaults?: boolean;
}

/** A command of the command line. */
export interface Command {
	readonly name: string;
	/** One line for each way to call it, without the name of the program. */
	readonly usage: readonly string[];
	readonly summary: string;
	readonly options: Readonly<
		Record<string, { readonly type: 'string' | 'boolean'; readonly multiple?: boolean; readonly help: string }>
	>;
	run(call: Call): Promise<Outcome>;
}
