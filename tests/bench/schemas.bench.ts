import { copyFileSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { placeItems } from '../../server/qti/placement.ts';
import { closeValidation, poolSize, runJob } from '../../server/qti/validate/pool.ts';
import { findPublishedSchema } from '../../server/qti/validate/published.ts';
import { writeItem } from '../../server/qti/write/item.ts';
import { writeShapedXml } from '../../server/qti/write/shaped-xml.ts';
import { referenceFolder } from '../helpers/reference.ts';
import { randomItems } from '../server/qti/random-items.ts';

/** Bytes of the largest published schema there is: QTI 3.0.1 items, for the Schematron rules in its annotations (schemas/README.md of the reference folder). */
const largest = 18_000_000;

/**
 * What it takes to compile an installed published schema: every validation worker compiles it at its first document. Once as
 * published (2.4 MB), once filled up to 18 MB with rules in annotations, as the schema of QTI 3.0.1 is, which was not at
 * hand. Prints seconds until the first document is checked and the next one, memory, and how long the main thread stood still.
 */
export async function run(): Promise<void> {
	if (referenceFolder === undefined)
		throw new Error('the bench needs the reference folder with the published 2.2 schema');
	console.log(`load of the machine before: ${loadavg()[0]?.toFixed(2)}`);
	const folder = mkdtempSync(join(tmpdir(), 'zeropair-schemas-'));
	try {
		const [small, large] = [join(folder, 'small'), join(folder, 'large')];
		for (const [place, bytes] of [
			[small, 0],
			[large, largest],
		] as const) {
			copySchema(join(referenceFolder, 'schemas/qti2.2'), place, bytes);
			await measure(place);
			await closeValidation();
		}
	} finally {
		rmSync(folder, { recursive: true });
	}
}

async function measure(folder: string): Promise<void> {
	const published = findPublishedSchema(folder, 'qti-2.2');
	const [placement] = placeItems(randomItems(1, 3, 'choice'));
	if (!published || !placement) throw new Error('expected a schema and an item');
	const xml = writeShapedXml(writeItem(placement, 'qti-2.2', 'svg').root);
	const document = { path: 'item.xml', xml, schema: 'qti-2.2' } as const;
	const check = (schema: typeof published | undefined) =>
		runJob({ kind: 'documents', documents: [document], published: schema });
	// Both workers start and compile the profile, so that only the published schema is left to do.
	await Promise.all(Array.from({ length: poolSize }, () => check(undefined)));
	globalThis.gc?.();
	const before = process.memoryUsage().rss;
	const still = monitorEventLoopDelay({ resolution: 5 });
	still.enable();
	const first = await time(() => Promise.all(Array.from({ length: poolSize }, () => check(published))));
	const next = await time(() => check(published));
	still.disable();
	const grown = (process.memoryUsage().rss - before) / 2 ** 20;
	console.log(
		[
			`${(readFileSync(published.file).length / 1e6).toFixed(1)} MB, compiled by ${poolSize} workers at once: ${first.toFixed(2)} s`,
			`the next document ${(next * 1000).toFixed(1)} ms`,
			`memory grew by ${grown.toFixed(0)} MB`,
			`longest stand of the main thread ${(still.max / 1e6).toFixed(0)} ms`,
		].join('; '),
	);
}

/** The published schema, filled up with rules in annotations to so many bytes. */
function copySchema(from: string, to: string, bytes: number): void {
	mkdirSync(to);
	cpSync(join(from, 'imports'), join(to, 'imports'), { recursive: true });
	copyFileSync(join(from, 'catalog.xml'), join(to, 'catalog.xml'));
	const text = readFileSync(join(from, 'imsqti_v2p2.xsd'), 'utf8');
	const [prefix = ''] = /<(\w+:)schema/.exec(text)?.slice(1) ?? [];
	const rule =
		'<r:rule xmlns:r="urn:rules" context="q:item"><r:assert test="count(q:a) &lt; 2">Too many.</r:assert></r:rule>';
	const missing = Math.max(0, Math.ceil((bytes - text.length) / rule.length));
	const note = `<${prefix}annotation><${prefix}appinfo>${rule.repeat(missing)}</${prefix}appinfo></${prefix}annotation>`;
	const end = text.lastIndexOf(`</${prefix}schema>`);
	writeFileSync(join(to, 'imsqti_v2p2.xsd'), missing === 0 ? text : text.slice(0, end) + note + text.slice(end));
}

async function time(work: () => Promise<unknown>): Promise<number> {
	const started = performance.now();
	await work();
	return (performance.now() - started) / 1000;
}
