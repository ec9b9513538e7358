import type { FormRecord } from '../../../item-bank/items/record.ts';
import { renderPngs } from '../../drawing/pngs.ts';
import { type DocumentProblem, ExportCancelledError, ExportInputError } from '../export-errors.ts';
import type { ExportOptions } from '../export-form.ts';
import type { Placement } from '../placement.ts';
import { poolSize, runJob } from '../validate/pool.ts';
import type { PublishedSchema } from '../validate/published.ts';
import type { DocumentFacts, DocumentReference } from '../validate/validate-document.ts';
import { type ListedItem, listItem } from '../write/manifest.ts';
import type { ItemBatch, WrittenBatch } from './item-batch.ts';
import { checkLinks } from './links.ts';
import { joinSegments, mostFiles, packFiles, type ZipSegment } from './write-zip.ts';

/** A package, or why there is none: with any problem there are no bytes. */
export interface BuiltPackage {
	readonly problems: readonly DocumentProblem[];
	readonly bytes: Uint8Array;
	/** In the order of the archive: the manifest first. */
	readonly paths: readonly string[];
}

// Small enough to stop soon and show progress, large enough that handing over costs nothing beside the work.
const batchSize = 100;

/** Writes, checks and packs. Throws ExportCancelledError when the signal says so, ExportInputError for too many files. */
export async function buildPackage(
	form: FormRecord | undefined,
	placements: readonly Placement[],
	published: PublishedSchema | undefined,
	options: ExportOptions,
): Promise<BuiltPackage> {
	throwIfCancelled(options.signal);
	const items = placements.map((placement) => listItem(placement, options.images));
	checkFileCount(items, form);
	// The frame is the longest job and needs nothing of the others.
	const [frame, batches] = await Promise.all([
		runJob({ kind: 'frame', frame: { form, items, version: options.as, published } }),
		writeBatches(placements, published, options),
	]);
	throwIfCancelled(options.signal);
	const problems = [...frame.problems, ...batches.flatMap((batch) => batch.problems)];
	if (problems.length > 0) return refuse(problems);
	const segments = [
		frame.segment,
		...batches.map(({ segment }) => segment),
		...(await renderPictures(batches, options)),
	];
	const paths = segments.flatMap(({ entries }) => entries.map(({ path }) => path));
	const broken = checkLinks({ paths, facts: new Map([...frame.facts, ...items.flatMap(factsOf)]) });
	if (broken.length > 0) return refuse(broken);
	const bytes = joinSegments(segments);
	options.onProgress?.('package', 1, 1);
	return { problems: [], bytes, paths };
}

/** What the workers made sure of: a document has the identifier of its place and shows the images listed for it. */
function factsOf({
	path,
	identifier,
	images,
	stimulus,
	part,
}: ListedItem): readonly (readonly [string, DocumentFacts])[] {
	const refer = (to: string, name = ''): DocumentReference => ({ href: to.replace('items/', ''), identifier: name });
	const shared = stimulus ? [refer(stimulus.path, stimulus.identifier)] : [];
	const references = [...shared, ...images.map((image) => refer(image))];
	const own = [path, { identifier, references, dependencies: [] }] as const;
	if (!stimulus || part !== 1) return [own];
	const shown = stimulus.images.map((image) => refer(image));
	return [own, [stimulus.path, { identifier: stimulus.identifier, references: shown, dependencies: [] }]];
}

function checkFileCount(items: readonly ListedItem[], form: FormRecord | undefined): void {
	const shared = items.flatMap(({ stimulus, part }) => (stimulus && part === 1 ? ['', ...stimulus.images] : []));
	const count = items.reduce((sum, { images }) => sum + 1 + images.length, shared.length + (form ? 2 : 1));
	if (count <= mostFiles) return;
	throw new ExportInputError('export-too-large', `expected at most ${mostFiles} files, found ${count}`);
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
	const count = Math.ceil(total / batchSize);
	const written: WrittenBatch[] = [];
	let next = 0;
	let done = 0;
	const work = async (): Promise<void> => {
		for (let index = next; index < count; index = next) {
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
	return written;
}

async function renderPictures(
	batches: readonly WrittenBatch[],
	options: ExportOptions,
): Promise<readonly ZipSegment[]> {
	const pictures = batches.flatMap((batch) => batch.pictures);
	if (pictures.length === 0) return [];
	try {
		const pngs = await renderPngs(
			pictures.map(({ svg }) => svg),
			(done, total) => options.onProgress?.('pictures', done, total),
			options.signal,
		);
		return [packFiles(pictures.map(({ path }, index) => ({ path, bytes: pngs[index] ?? new Uint8Array() })))];
	} catch (error) {
		throw options.signal?.aborted ? new ExportCancelledError(error) : error;
	}
}

function throwIfCancelled(signal: AbortSignal | undefined): void {
	if (signal?.aborted) throw new ExportCancelledError(signal.reason);
}
