import type { FormRecord } from '../../../item-bank/items/record.ts';
import { type DocumentProblem, ExportInputError } from '../export-errors.ts';
import type { ExportOptions } from '../export-form.ts';
import type { Placement } from '../placement.ts';
import { poolSize, runJob } from '../validate/pool.ts';
import type { PublishedSchema } from '../validate/published.ts';
import type { DocumentFacts, DocumentReference } from '../validate/validate-document.ts';
import { type ListedItem, listItem } from '../write/manifest.ts';
import { packPictures, throwIfCancelled, writeInBatches } from './batches.ts';
import { checkLinks } from './links.ts';
import { joinSegments, mostFiles } from './write-zip.ts';

/** A package, or why there is none: with any problem there are no bytes. */
export interface BuiltPackage {
	readonly problems: readonly DocumentProblem[];
	readonly bytes: Uint8Array;
	/** In the order of the archive: the manifest first. */
	readonly paths: readonly string[];
}

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
		writeInBatches(
			placements,
			poolSize,
			(batch) =>
				runJob({ kind: 'items', batch: { placements: batch, version: options.as, images: options.images, published } }),
			options,
		),
	]);
	throwIfCancelled(options.signal);
	const problems = [...frame.problems, ...batches.flatMap((batch) => batch.problems)];
	if (problems.length > 0) return refuse(problems);
	const segments = [frame.segment, ...batches.map(({ segment }) => segment), ...(await packPictures(batches, options))];
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
