import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runCommand } from '../../server/cli/run-command.ts';
import { makeTestFolder } from './test-folder.ts';

/** What one call of the command line said and how it ended. */
export interface Run {
	readonly status: number;
	readonly out: string;
	readonly err: string;
	// biome-ignore lint/suspicious/noExplicitAny: answers of every shape
	readonly json: any;
}

/** A command line with a bank and files of its own. */
export function makeCommandLine() {
	const folder = makeTestFolder();
	const data = join(folder, 'data');
	const write = (name: string, document: unknown): string => {
		const file = join(folder, name);
		writeFileSync(file, typeof document === 'string' ? document : JSON.stringify(document));
		return file;
	};
	const run = async (words: readonly string[], signal: AbortSignal = new AbortController().signal): Promise<Run> => {
		const out: string[] = [];
		const err: string[] = [];
		const status = await runCommand(words, {
			print: (line) => void out.push(line),
			printError: (line) => void err.push(line),
			signal,
			dataFolder: data,
		});
		const text = status === 0 ? out.join('\n') : err.join('\n');
		return {
			status,
			out: out.join('\n'),
			err: err.join('\n'),
			json: words.includes('--json') && text !== '' ? JSON.parse(text) : undefined,
		};
	};
	return { folder, data, write, run };
}
