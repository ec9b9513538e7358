import { exportPackage, exportVersions } from '../export-package.ts';
import type { Call, Command, Outcome } from './command.ts';
import { checkExport } from './export-check.ts';
import { checkFree, writeFiles } from './files.ts';
import { UsageError } from './usage-error.ts';
import { oneOf, oneWord, versionOf } from './words.ts';

/** Takes a form out as a package, with the answer map beside it. */
export const exportCommand: Command = {
	name: 'export',
	usage: [
		`export FORM --as ${exportVersions.join('|')} --to FILE [--images png|svg] [--points hotspot|choice]`,
		'       [--grid number|columns] [--with-feedback] [--convert] [--leave-out] [--version N] [--replace]',
		'export FORM --check [--as VERSION] [--convert] [--leave-out] [--version N]',
	],
	summary: 'writes a form as a package for a platform, and beside it the answer map, which holds the keys',
	options: {
		as: { type: 'string', help: exportVersions.join(', ') },
		to: { type: 'string', help: 'file of the package, such as unit.zip or unit.imscc' },
		images: { type: 'string', help: 'figures as png (when left out) or svg' },
		points: { type: 'string', help: 'points on lines: hotspot (when left out), or choice among lettered points' },
		grid: { type: 'string', help: 'gridded items: number (when left out), or columns as on paper' },
		'with-feedback': {
			type: 'boolean',
			help: 'says after answering what is right and what an answer is consistent with; puts keys into the package',
		},
		convert: { type: 'boolean', help: 'convert items of kinds that the version does not carry' },
		'leave-out': { type: 'boolean', help: 'leave items out that are neither carried nor converted' },
		check: { type: 'boolean', help: 'write nothing; show what each version carries of the form' },
		version: { type: 'string', help: 'version of the form; the newest when left out' },
		replace: { type: 'boolean', help: 'overwrite files of these names' },
	},
	run,
};

async function run(call: Call): Promise<Outcome> {
	const id = oneWord(call.words, 'FORM');
	const version = versionOf(call);
	const { to, replace, convert, check, 'leave-out': leaveOut, 'with-feedback': feedback } = call.options;
	const uncarried = { convert: convert === true, leaveOut: leaveOut === true };
	if (check === true) return checkExport(call, id, version, uncarried);
	const as = oneOf(call, 'as', exportVersions);
	const images = oneOf(call, 'images', ['png', 'svg'] as const, 'png');
	const points = oneOf(call, 'points', ['hotspot', 'choice'] as const, 'hotspot');
	const grid = oneOf(call, 'grid', ['number', 'columns'] as const, 'number');
	if (typeof to !== 'string' || to === '') throw new UsageError('expected --to FILE, found none');
	const mapFile = `${to.replace(/\.(?:zip|imscc)$/i, '')}-answer-map.csv`;
	const isReplacing = replace === true;
	checkFree([to, mapFile], isReplacing);
	const store = await call.openStore(true);
	const { record, items } = await store.forms.get(id, version);
	const { bytes, answerMap, report } = await exportPackage(
		{ form: record, items },
		{ as, images, points, grid, hasFeedback: feedback === true, ...uncarried, signal: call.world.signal },
	);
	writeFiles(
		[
			{ file: mapFile, content: answerMap },
			{ file: to, content: bytes },
		],
		isReplacing,
	);
	const { notes, warnings, validated } = report;
	const lines = [
		`${to}: ${report.items} items as ${as}, ${bytes.length} bytes`,
		`${mapFile}: which item is which, with keys; keep it confidential`,
		...validated.map(({ schema, checked }) => `${checked ? 'checked' : 'not checked (not installed)'}: ${schema}`),
		...[...notes, ...warnings].map((note) => `note: ${note}`),
	];
	return { value: { file: to, answerMap: mapFile, bytes: bytes.length, report }, lines };
}
