import { fillDemo } from '../demo.ts';
import { restoreStore } from '../store/backup.ts';
import type { Call, Command, Outcome } from './command.ts';
import { noWords, oneWord } from './words.ts';

/** Copies the bank into one file. */
export const backupCommand: Command = {
	name: 'backup',
	usage: ['backup FILE'],
	summary: 'copies the bank into one new file, also while it is served',
	options: {},
	run: async (call: Call): Promise<Outcome> => {
		const file = oneWord(call.words, 'FILE');
		const store = await call.openStore(true);
		const report = await store.backup(file);
		return { value: report, lines: [`${report.file}: ${report.bytes} bytes; it holds keys and student codes`] };
	},
};

/** Puts a backup in the place of the bank. */
export const restoreCommand: Command = {
	name: 'restore',
	usage: ['restore FILE'],
	summary: 'checks a backup and puts it in place; the bank it replaces is kept beside it',
	options: {},
	run: async (call: Call): Promise<Outcome> => {
		const file = oneWord(call.words, 'FILE');
		const report = await restoreStore(call.dataFolder, file, () => new Date());
		const kept = report.before === undefined ? [] : [`The bank that was there is kept as ${report.before}`];
		return { value: report, lines: [`The bank in ${call.dataFolder} is now the one of ${file}`, ...kept] };
	},
};

/** Fills in the demo department. */
export const demoCommand: Command = {
	name: 'demo',
	usage: ['demo'],
	summary: 'fills in the demo department of Saltmarsh Ridge Middle School',
	options: {},
	run: async (call: Call): Promise<Outcome> => {
		noWords(call.words);
		const store = await call.openStore(false);
		const report = await fillDemo(store);
		const { items, forms, groups, blueprints, sittings } = report;
		return {
			value: report,
			lines: [
				`Saltmarsh Ridge moved in: ${items} items, ${forms} forms, ${groups} groups, ${blueprints} blueprints, ${sittings} sittings of made-up students`,
			],
		};
	},
};
