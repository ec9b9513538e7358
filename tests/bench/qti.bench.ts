import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import type { FormRecord, ItemRecord } from '../../item-bank/items/record.ts';
import { exportForm } from '../../server/qti/export-form.ts';
import { closeValidation } from '../../server/qti/validate/pool.ts';
import { referenceFolder } from '../helpers/reference.ts';
import { randomForm, randomItems } from '../server/qti/random-items.ts';

/** What the export of so many items may cost, against xmllint and zip for the same files. */
const targets = [
	{ count: 1_000, ratio: 1.5 },
	{ count: 10_000, ratio: 1 },
] as const;
const memoryTarget = 600;

/**
 * Writes, validates and packs distinct items with figures as SVG, against `xmllint --noout --schema` (one process, the
 * published QTI 2.2 schema) over the same item and test files plus `zip -q -r` of the same folder. Nothing is cached
 * between runs: every run has items of its own. Prints seconds, ratios and memory.
 */
export async function run(): Promise<void> {
	if (referenceFolder === undefined)
		throw new Error('the bench needs the reference folder with the published 2.2 schema');
	const schema = join(referenceFolder, 'schemas/qti2.2');
	for (const { count, ratio } of targets) {
		const rounds = [];
		for (let round = 0; round < 3; round += 1) rounds.push(await measure(count, 5000 + count + round, schema));
		const [best] = rounds.sort((one, other) => one.ours / one.theirs - other.ours / other.theirs).slice(1, 2);
		if (!best) throw new Error('no round');
		const found = best.ours / best.theirs;
		console.log(
			`${count} items, ${best.files} files: ours ${best.ours.toFixed(2)} s; xmllint ${best.xmllint.toFixed(2)} s + zip ${best.zip.toFixed(2)} s; ratio ${found.toFixed(2)} (target ${ratio}); ${((best.ours / count) * 1e6).toFixed(0)} µs an item`,
		);
	}
	const peak = process.resourceUsage().maxRSS / 1024;
	console.log(`peak memory of the process: ${peak.toFixed(0)} MB (target ${memoryTarget})`);
	await closeValidation();
}

interface Round {
	readonly files: number;
	/** Seconds. */
	readonly ours: number;
	readonly xmllint: number;
	readonly zip: number;
	readonly theirs: number;
}

async function measure(count: number, seed: number, schema: string): Promise<Round> {
	const items = randomItems(count, seed);
	const started = performance.now();
	const { bytes, report } = await exportForm({ form: formOf(items, seed), items }, { as: 'qti-2.2', images: 'svg' });
	const ours = (performance.now() - started) / 1000;
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-bench-'));
	try {
		for (const [path, content] of Object.entries(unzipSync(bytes))) {
			mkdirSync(dirname(join(folder, path)), { recursive: true });
			writeFileSync(join(folder, path), content);
		}
		const documents = report.files.filter((path) => path.endsWith('.xml') && path !== 'imsmanifest.xml');
		const xmllint = time(() =>
			execFileSync(
				'xargs',
				['-s', '2000000', '-n', '100000', 'xmllint', '--noout', '--nonet', '--schema', join(schema, 'imsqti_v2p2.xsd')],
				{
					cwd: folder,
					input: documents.join('\n'),
					stdio: ['pipe', 'ignore', 'ignore'],
					env: { ...process.env, XML_CATALOG_FILES: join(schema, 'catalog.xml') },
				},
			),
		);
		const zip = time(() => execFileSync('zip', ['-q', '-r', 'package.zip', '.'], { cwd: folder }));
		return { files: report.files.length, ours, xmllint, zip, theirs: xmllint + zip };
	} finally {
		rmSync(folder, { recursive: true });
	}
}

/** Sections hold at most a thousand items; the bench needs ten thousand. */
function formOf(items: readonly ItemRecord[], seed: number): FormRecord {
	return randomForm(items, seed);
}

function time(work: () => void): number {
	const started = performance.now();
	work();
	return (performance.now() - started) / 1000;
}
