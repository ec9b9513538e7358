import { join } from 'node:path';
import { readClassList } from '../print/class-list.ts';
import { printForm } from '../print/print-form.ts';
import type { Store } from '../store/open-store.ts';
import type { Call, Command, Outcome } from './command.ts';
import { checkFree, makeFolder, readBytes, writeFiles } from './files.ts';
import { UsageError } from './usage-error.ts';
import { oneOf, oneWord, versionOf } from './words.ts';

/** Puts a form on paper. */
export const printCommand: Command = {
	name: 'print',
	usage: [
		'print FORM --to DIR [--class FILE | --group ID] [--paper a4|letter] [--large] [--columns 2] [--beside] [--ruled] [--version N] [--replace]',
	],
	summary: 'writes booklet, answer sheets, key with worked steps, administration sheet and work pages as PDF',
	options: {
		to: { type: 'string', help: 'folder for the files; made when it is not there' },
		class: { type: 'string', help: 'file with one student code a line (or the first column of a CSV): a set for each' },
		group: { type: 'string', help: 'class group of the bank, instead of a file' },
		paper: { type: 'string', help: 'letter (when left out) or a4' },
		large: { type: 'boolean', help: 'large print: nothing below 18 points, one item a page' },
		columns: { type: 'string', help: 'columns of the booklet, 1 (when left out) or 2' },
		beside: { type: 'boolean', help: 'answers beside each item in the booklet instead of on sheets' },
		ruled: { type: 'boolean', help: 'one ruled work page instead of one for each item' },
		version: { type: 'string', help: 'version of the form; the newest when left out' },
		replace: { type: 'boolean', help: 'overwrite files of these names' },
	},
	run,
};

async function run(call: Call): Promise<Outcome> {
	const id = oneWord(call.words, 'FORM');
	const version = versionOf(call);
	const paper = oneOf(call, 'paper', ['letter', 'a4'] as const, 'letter');
	const columns = oneOf(call, 'columns', ['1', '2'] as const, '1') === '2' ? 2 : 1;
	const { to, large, beside, ruled, replace } = call.options;
	if (typeof to !== 'string' || to === '') throw new UsageError('expected --to DIR, found none');
	const store = await call.openStore(true);
	const { record, items } = await store.forms.get(id, version);
	const students = await readStudents(call, store);
	const files = await printForm(
		{ form: record, items, students },
		{
			paper,
			columns,
			large: large === true,
			grids: beside === true ? 'beside' : 'separate',
			work: ruled === true ? 'ruled' : 'items',
			signal: call.world.signal,
			onProgress: tellProgress(call),
		},
	);
	const named = files.map(({ name, bytes }) => ({ file: join(to, name), content: bytes }));
	checkFree(
		named.map(({ file }) => file),
		replace === true,
	);
	makeFolder(to);
	writeFiles(named, replace === true);
	const lines = [
		...named.map(({ file, content }) => `${file}: ${content.length} bytes`),
		'key.pdf and administration.pdf are for staff; keep them confidential.',
	];
	const value = { files: named.map(({ file, content }) => ({ file, bytes: content.length })) };
	return { value, lines };
}

/** Student codes of the file or the group named; none for a single blank set. */
async function readStudents(call: Call, store: Store): Promise<readonly string[]> {
	const { class: file, group } = call.options;
	if (typeof file === 'string' && typeof group === 'string') {
		throw new UsageError('expected --class or --group, found both');
	}
	if (typeof group === 'string') return (await store.groups.get(group)).group.studentCodes;
	if (typeof file !== 'string') return [];
	return readClassList(readBytes(file).toString('utf8'));
}

/** A line of progress for every fiftieth page, for sets that take a while. */
function tellProgress({ world, isJson }: Call): (done: number, total: number) => void {
	return (done, total) => {
		if (!isJson && total > 50 && done % 50 === 0) world.printError(`${done} of ${total} pages`);
	};
}
