import { exportForm } from '../qti/export-form.ts';
import { qtiVersions } from '../qti/versions.ts';
import type { Call, Command, Outcome } from './command.ts';
import { checkFree, writeFiles } from './files.ts';
import { UsageError } from './usage-error.ts';
import { oneOf, oneWord, versionOf } from './words.ts';

/** Takes a form out as a package, with the answer map beside it. */
export const exportCommand: Command = {
	name: 'export',
	usage: [
		'export FORM --as qti-2.1|qti-2.2|qti-3.0 --to FILE [--images png|svg] [--points hotspot|choice]',
		'       [--grid number|columns] [--with-feedback] [--version N] [--replace]',
	],
	summary: 'writes a form as a QTI package, and beside it the answer map, which holds the keys',
	options: {
		as: { type: 'string', help: 'qti-2.1, qti-2.2 or qti-3.0' },
		to: { type: 'string', help: 'file of the package, such as unit.zip' },
		images: { type: 'string', help: 'figures as png (when left out) or svg' },
		points: { type: 'string', help: 'points on lines: hotspot (when left out), or choice among lettered points' },
		grid: { type: 'string', help: 'gridded items: number (when left out), or columns as on paper' },
		'with-feedback': {
			type: 'boolean',
			help: 'says after answering what is right and what an answer is consistent with; puts keys into the package',
		},
		version: { type: 'string', help: 'version of the form; the newest when left out' },
		replace: { type: 'boolean', help: 'overwrite files of these names' },
	},
	run,
};

async function run(call: Call): Promise<Outcome> {
	const id = oneWord(call.words, 'FORM');
	const as = oneOf(call, 'as', qtiVersions);
	const version = versionOf(call);
	const images = oneOf(call, 'images', ['png', 'svg'] as const, 'png');
	const points = oneOf(call, 'points', ['hotspot', 'choice'] as const, 'hotspot');
	const grid = oneOf(call, 'grid', ['number', 'columns'] as const, 'number');
	const { to, replace, 'with-feedback': feedback } = call.options;
	if (typeof to !== 'string' || to === '') throw new UsageError('expected --to FILE, found none');
	const mapFile = `${to.replace(/\.zip$/i, '')}-answer-map.csv`;
	const isReplacing = replace === true;
	checkFree([to, mapFile], isReplacing);
	const store = await call.openStore(true);
	const { record, items } = await store.forms.get(id, version);
	const { bytes, answerMap, report } = await exportForm(
		{ form: record, items },
		{ as, images, points, grid, hasFeedback: feedback === true, signal: call.world.signal },
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
