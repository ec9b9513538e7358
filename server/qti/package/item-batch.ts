import { ItemKeyError } from '../../../item-bank/items/key.ts';
import { writeSvg } from '../../drawing/svg.ts';
import { writeXml, XmlError } from '../../xml.ts';
import type { DocumentProblem } from '../export-errors.ts';
import type { Placement } from '../placement.ts';
import type { PublishedSchema } from '../validate/published.ts';
import { type DocumentFacts, validateDocument } from '../validate/validate-document.ts';
import type { QtiVersion } from '../versions.ts';
import { type ImageFormat, writeItem } from '../write/item.ts';
import { breakLines } from '../write/lines.ts';
import { writeItemResources, writeManifest } from '../write/manifest.ts';
import { deflatePart, type ZipPart } from './write-zip.ts';

/** A run of items to write, check and compress. Plain data for a worker. */
export interface ItemBatch {
	readonly placements: readonly Placement[];
	readonly version: QtiVersion;
	readonly images: ImageFormat;
	readonly published: PublishedSchema | undefined;
}

/** What became of a batch. With any problem, nothing else is there. */
export interface WrittenBatch {
	readonly problems: readonly DocumentProblem[];
	/** Item documents, and their figures when written as SVG. */
	readonly parts: readonly ZipPart[];
	/** Figures still to be turned into PNG: path within the package and SVG text. */
	readonly pictures: readonly { readonly path: string; readonly svg: string }[];
	/** What each item document points at, by its path. */
	readonly facts: readonly (readonly [path: string, facts: DocumentFacts])[];
	/** The resources of the manifest, as text that stands between <resources> and </resources>. */
	readonly resources: string;
}

/** Writes a batch of items: tree, text, checked text, compressed text. */
export function writeItemBatch(batch: ItemBatch): WrittenBatch {
	const problems: DocumentProblem[] = [];
	const parts: ZipPart[] = [];
	const pictures: { readonly path: string; readonly svg: string }[] = [];
	const facts: (readonly [string, DocumentFacts])[] = [];
	const resources = batch.placements.flatMap((placement) => {
		const path = `items/${placement.stem}.xml`;
		try {
			const written = writeItem(placement, batch.version, batch.images);
			const xml = Buffer.from(breakLines(writeXml(written.root, { declaration: true })));
			const finding = validateDocument({ path, xml, schema: batch.version }, batch.published);
			problems.push(...finding.problems.map((problem) => ({ ...problem, item: placement.record.id })));
			if (finding.facts) facts.push([path, finding.facts]);
			if (problems.length > 0) return [];
			parts.push(deflatePart(path, xml));
			for (const image of written.images) {
				const svg = writeSvg(image.root);
				if (batch.images === 'png') pictures.push({ path: image.path, svg });
				else parts.push(deflatePart(image.path, Buffer.from(svg)));
			}
			const images = written.images.map((image) => image.path);
			return writeItemResources(placement, { path, images, interaction: written.interaction }, batch.version);
		} catch (error) {
			problems.push(writingProblem(error, path, placement));
			return [];
		}
	});
	if (problems.length > 0) return { problems, parts: [], pictures: [], facts: [], resources: '' };
	return { problems, parts, pictures, facts, resources: writeResources(batch, resources) };
}

/** Texts and keys that cannot be written are the item's problems; anything else is our own fault and goes on. */
function writingProblem(error: unknown, file: string, placement: Placement): DocumentProblem {
	const at = { path: file, file, line: undefined, item: placement.record.id };
	if (error instanceof XmlError) {
		const element = error.where.split('/').findLast((step) => !step.startsWith('@'));
		return { ...at, code: error.code, element, message: error.message };
	}
	if (error instanceof ItemKeyError) return { ...at, code: error.code, element: undefined, message: error.message };
	throw error;
}

// Written inside a whole manifest, so that every prefix is declared where it is checked, then cut out of it.
function writeResources(batch: ItemBatch, resources: Parameters<typeof writeManifest>[2]): string {
	const manifest = writeXml(writeManifest(undefined, batch.placements, resources, batch.version));
	const opening = '<resources>';
	return manifest.slice(manifest.indexOf(opening) + opening.length, manifest.lastIndexOf('</resources>'));
}
