import { findPort, runService } from '../main.ts';
import type { Call, Command, Outcome } from './command.ts';
import { noWords } from './words.ts';

/** Serves the bank on this machine. */
export const serveCommand: Command = {
	name: 'serve',
	usage: ['serve [--port N] [--host 127.0.0.1|::1|localhost]'],
	summary: 'serves the bank on this machine until it is stopped',
	options: {
		port: { type: 'string', help: '8417 when left out; 0 lets the system choose' },
		host: { type: 'string', help: 'a loopback address; 127.0.0.1 when left out' },
	},
	run,
};

async function run(call: Call): Promise<Outcome> {
	noWords(call.words);
	const { port, host = '127.0.0.1' } = call.options;
	const options = {
		dataFolder: call.dataFolder,
		port: findPort(port === undefined ? undefined : String(port)),
		host: String(host),
	};
	const print = call.isJson ? (line: string) => call.world.printError(line) : call.world.print;
	await runService(options, print, call.world.signal);
	return { value: { stopped: true }, lines: [] };
}
