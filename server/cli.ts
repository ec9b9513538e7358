import { runCommand } from './cli/run-command.ts';
import { findDataFolder } from './main.ts';

const stopped = new AbortController();
process.once('SIGINT', () => stopped.abort());
process.once('SIGTERM', () => stopped.abort());

// Who reads through a pipe may stop reading early; that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
	if (error.code !== 'EPIPE') throw error;
});

const status = await runCommand(process.argv.slice(2), {
	print: (line) => process.stdout.write(`${line}\n`),
	printError: (line) => process.stderr.write(`${line}\n`),
	signal: stopped.signal,
	dataFolder: findDataFolder(),
});
process.exitCode = status;
