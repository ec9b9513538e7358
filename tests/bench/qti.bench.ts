import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { projectRoot } from '../../server/project-root.ts';
import { exportForm } from '../../server/qti/export-form.ts';
import { closeValidation } from '../../server/qti/validate/pool.ts';
import { referenceFolder } from '../helpers/reference.ts';
import { randomForm, randomItems } from '../server/qti/random-items.ts';

/** What the export of so many items may cost, against xmllint and zip for the same files. 3.0 has none: its schema here is no published one. */
const targets = [
	{ as: 'qti-2.2', count: 1_000, ratio: 1.5 },
	{ as: 'qti-2.2', count: 10_000, ratio: 1 },
	{ as: 'qti-3.0', count: 1_000, ratio: undefined },
	{ as: 'qti-3.0', count: 10_000, ratio: undefined },
] as const;
/** Megabytes. */
const memoryTarget = 600;
const rounds = 3;

/**
 * Writes, validates and packs distinct items with figures as SVG, against `xmllint --noout --schema` over the same files plus
 * `zip -q -r` of the same folder: one process for items and test (the published QTI 2.2 schema, for 3.0 the one reconstructed
 * from it), one for the manifest (our profile's schema, the same on both sides). Every round has items of its own, and nothing is
 * cached between rounds but compiled schemas. Prints seconds, ratios and memory.
 */
export async function run(): Promise<void> {
	if (referenceFolder === undefined)
		throw new Error('the bench needs the reference folder with the published 2.2 schema');
	const schemas = {
		'qti-2.2': join(referenceFolder, 'schemas/qti2.2/imsqti_v2p2.xsd'),
		'qti-3.0': join(referenceFolder, 'schemas/qti3/qti3-reconstructed.xsd'),
	};
	console.log(`load of the machine before: ${loadavg()[0]?.toFixed(2)}`);
	for (const { as, count, ratio } of targets) {
		const measured: Round[] = [];
		for (let round = 0; round < rounds; round += 1)
			measured.push(await measure(as, count, 5000 + count + round, schemas[as]));
		const middle = [...measured].sort((one, other) => ratioOf(one) - ratioOf(other))[Math.floor(rounds / 2)];
		if (!middle) throw new Error('no round was measured');
		const { files, ours, work, xmllint, zip } = middle;
		console.log(
			[
				`${as}, ${count} items, ${files} files: ${ours.toFixed(2)} s (${work.toFixed(2)} s of processor time)`,
				`xmllint ${xmllint.toFixed(2)} s + zip ${zip.toFixed(2)} s`,
				`ratio ${ratioOf(middle).toFixed(2)} (target ${ratio ?? 'none'}; rounds ${measured.map((each) => ratioOf(each).toFixed(2)).join(', ')})`,
				`${((ours / count) * 1e6).toFixed(0)} µs an item`,
			].join('; '),
		);
	}
	await closeValidation();
	console.log(
		`peak memory of a process that exports 10000 items: ${measureMemory([1])} MB (target ${memoryTarget}), twice: ${measureMemory([1, 2])} MB`,
	);
	console.log(`load of the machine after: ${loadavg()[0]?.toFixed(2)}`);
}

interface Round {
	readonly files: number;
	/** Seconds on the clock. */
	readonly ours: number;
	/** Seconds of processor time, all threads together. */
	readonly work: number;
	readonly xmllint: number;
	readonly zip: number;
}

function ratioOf({ ours, xmllint, zip }: Round): number {
	return ours / (xmllint + zip);
}

async function measure(as: 'qti-2.2' | 'qti-3.0', count: number, seed: number, schema: string): Promise<Round> {
	const items = randomItems(count, seed);
	const form = randomForm(items, seed);
	const before = process.cpuUsage();
	const started = performance.now();
	const { bytes, report } = await exportForm({ form, items }, { as, images: 'svg' });
	const ours = (performance.now() - started) / 1000;
	const { user, system } = process.cpuUsage(before);
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-bench-'));
	try {
		for (const [path, content] of Object.entries(unzipSync(bytes))) {
			mkdirSync(dirname(join(folder, path)), { recursive: true });
			writeFileSync(join(folder, path), content);
		}
		const documents = report.files.filter((path) => path.endsWith('.xml') && path !== 'imsmanifest.xml');
		const manifestSchema = join(projectRoot, 'schemas/qti', `manifest-${as.slice(-3)}.xsd`);
		const xmllint = lint(folder, schema, documents) + lint(folder, manifestSchema, ['imsmanifest.xml']);
		const zip = time(() => execFileSync('zip', ['-q', '-r', 'package.zip', '.'], { cwd: folder }));
		return { files: report.files.length, ours, work: (user + system) / 1e6, xmllint, zip };
	} finally {
		rmSync(folder, { recursive: true });
	}
}

/** Seconds of one process over all the files. */
function lint(folder: string, schema: string, files: readonly string[]): number {
	const command = ['-s', '2000000', '-n', '100000', 'xmllint', '--noout', '--nonet', '--schema', schema];
	return time(() =>
		execFileSync('xargs', command, {
			cwd: folder,
			input: files.join('\n'),
			stdio: ['pipe', 'ignore', 'ignore'],
			env: { ...process.env, XML_CATALOG_FILES: join(dirname(schema), 'catalog.xml') },
		}),
	);
}

/** In a process of its own, so that unpacking for the others does not count. */
function measureMemory(seeds: readonly number[]): number {
	const [exporting, random] = ['../../server/qti/export-form.js', '../server/qti/random-items.js'].map((path) =>
		JSON.stringify(new URL(path, import.meta.url).href),
	);
	const script = `const { exportForm } = await import(${exporting});
const { randomForm, randomItems } = await import(${random});
for (const seed of ${JSON.stringify(seeds)}) {
	const items = randomItems(10_000, seed);
	await exportForm({ form: randomForm(items, seed), items }, { as: 'qti-2.2', images: 'svg' });
}
console.log(Math.round(process.resourceUsage().maxRSS * 1024 / 1e6));`;
	const printed = execFileSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' });
	return Number(printed);
}

function time(work: () => void): number {
	const started = performance.now();
	work();
	return (performance.now() - started) / 1000;
}
