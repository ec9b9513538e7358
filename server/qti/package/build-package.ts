import type { FormRecord } from '../../../item-bank/items/record.ts';
import { renderPngs } from '../../drawing/pngs.ts';
import { writeXml, XmlError } from '../../xml.ts';
import { type DocumentProblem, ExportCancelledError, ExportInputError } from '../export-errors.ts';
import type { ExportOptions } from '../export-form.ts';
import type { Placement } from '../placement.ts';
import { poolSize, runJob } from '../validate/pool.ts';
import type { PublishedSchema } from '../validate/published.ts';
import type { CheckedDocument, DocumentFacts } from '../validate/validate-document.ts';
import { breakLines } from '../write/lines.ts';
import { manifestPath, writeManifest } from '../write/manifest.ts';
import { testPath, writeTest } from '../write/test.ts';
import type { ItemBatch, WrittenBatch } from './item-batch.ts';
import { checkLinks } from './links.ts';
import { deflatePart, mostEntries, writeZip, type ZipPart } from './write-zip.ts';

/** A package, or why there is none: with any problem there are no bytes. */
export interface BuiltPackage {
	readonly problems: readonly DocumentProblem[];
	readonly bytes: Uint8Array;
	/** In the order of the archive: the manifest first, then by path. */
	readonly paths: readonly string[];
}

// Small enough to stop soon and show progress, large enough that handing over costs nothing beside the work.
const batchSize = 100;

/** Writes, checks and packs. Throws ExportCancelledError when the signal says so. */
export async function buildPackage(
	form: FormRecord | undefined,
	placements: readonly Placement[],
	published: PublishedSchema | undefined,
	options: ExportOptions,
): Promise<BuiltPackage> {
	const batches = await writeBatches(placements, published, options);
	const found = batches.flatMap(({ problems }) => problems);
	if (found.length > 0) return refuse(found);
	const parts = batches.flatMap((batch) => batch.parts);
	parts.push(...(await renderPictures(batches, options)));
	const { documents, problems } = writeFrame(form, placements, batches, options);
	if (problems.length > 0) return refuse(problems);
	const findings = await runJob({ kind: 'documents', documents, published });
	throwIfCancelled(options.signal);
	const wrong = findings.flatMap(({ problems }) => problems);
	if (wrong.length > 0) return refuse(wrong);
	parts.push(...documents.map(({ path, xml }) => deflatePart(path, typeof xml === 'string' ? Buffer.from(xml) : xml)));
	if (parts.length > mostEntries) {
		throw new ExportInputError('export-too-large', `expected at most ${mostEntries} files, found ${parts.length}`);
	}
	parts.sort(comparePaths);
	const paths = parts.map(({ path }) => path);
	const facts = new Map<string, DocumentFacts>(batches.flatMap((batch) => batch.facts));
	documents.forEach(({ path }, index) => {
		const known = findings[index]?.facts;
		if (known) facts.set(path, known);
	});
	const broken = checkLinks({ paths, facts });
	if (broken.length > 0) return refuse(broken);
	options.onProgress?.('package', 1, 1);
	return { problems: [], bytes: writeZip(parts), paths };
}

function refuse(problems: readonly DocumentProblem[]): BuiltPackage {
	return { problems, bytes: new Uint8Array(), paths: [] };
}

async function writeBatches(
	placements: readonly Placement[],
	published: PublishedSchema | undefined,
	options: ExportOptions,
): Promise<readonly WrittenBatch[]> {
	const total = placements.length;
	const starts = Array.from({ length: Math.ceil(total / batchSize) }, (_, index) => index * batchSize);
	const written: WrittenBatch[] = [];
	let next = 0;
	let done = 0;
	const work = async (): Promise<void> => {
		for (let index = next; index < starts.length; index = next) {
			next += 1;
			throwIfCancelled(options.signal);
			const from = index * batchSize;
			const batch: ItemBatch = {
				placements: placements.slice(from, from + batchSize),
				version: options.as,
				images: options.images,
				published,
			};
			written[index] = await runJob({ kind: 'items', batch });
			done += batch.placements.length;
			options.onProgress?.('items', done, total);
		}
	};
	// Twice as many lines as workers, so that none waits for its next batch.
	await Promise.all(Array.from({ length: poolSize * 2 }, work));
	throwIfCancelled(options.signal);
	return written;
}

async function renderPictures(batches: readonly WrittenBatch[], options: ExportOptions): Promise<readonly ZipPart[]> {
	const pictures = batches.flatMap((batch) => batch.pictures);
	if (pictures.length === 0) return [];
	try {
		const pngs = await renderPngs(
			pictures.map(({ svg }) => svg),
			(done, total) => options.onProgress?.('pictures', done, total),
			options.signal,
		);
		return pictures.map(({ path }, index) => deflatePart(path, pngs[index] ?? new Uint8Array()));
	} catch (error) {
		throw options.signal?.aborted ? new ExportCancelledError(error) : error;
	}
}

/** The manifest, and the test where there is a form; or what is wrong with the texts of the form. */
function writeFrame(
	form: FormRecord | undefined,
	placements: readonly Placement[],
	batches: readonly WrittenBatch[],
	options: ExportOptions,
): { readonly documents: readonly CheckedDocument[]; readonly problems: readonly DocumentProblem[] } {
	const version = options.as;
	let file = manifestPath;
	try {
		const frame = writeXml(writeManifest(form, placements, [], version), { declaration: true });
		const resources = batches.map((batch) => batch.resources).join('');
		const xml = Buffer.from(breakLines(insertResources(frame, resources)));
		const schema = version === 'qti-2.1' ? 'manifest-2.1' : 'manifest-2.2';
		const manifest: CheckedDocument = { path: manifestPath, xml, schema };
		if (!form) return { documents: [manifest], problems: [] };
		file = testPath;
		const test = Buffer.from(breakLines(writeXml(writeTest(form, placements, version), { declaration: true })));
		return { documents: [manifest, { path: testPath, xml: test, schema: version }], problems: [] };
	} catch (error) {
		if (!(error instanceof XmlError)) throw error;
		const element = error.where.split('/').findLast((step) => !step.startsWith('@'));
		const problem = { code: error.code, path: file, file, line: undefined, element, message: error.message };
		return { documents: [], problems: [problem] };
	}
}

// The resources were written by the workers, each within a whole manifest; here they only change places as text.
function insertResources(frame: string, resources: string): string {
	const empty = '<resources/>';
	if (frame.includes(empty)) return frame.replace(empty, () => `<resources>${resources}</resources>`);
	const closing = frame.lastIndexOf('</resources>');
	return frame.slice(0, closing) + resources + frame.slice(closing);
}

function comparePaths(one: ZipPart, other: ZipPart): number {
	if (one.path === manifestPath) return -1;
	if (other.path === manifestPath) return 1;
	return one.path < other.path ? -1 : one.path > other.path ? 1 : 0;
}

function throwIfCancelled(signal: AbortSignal | undefined): void {
	if (signal?.aborted) throw new ExportCancelledError(signal.reason);
}
