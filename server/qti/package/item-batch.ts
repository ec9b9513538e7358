import { ExpressionSyntaxError } from '../../../item-bank/expression/syntax-error.ts';
import { invariant } from '../../../item-bank/invariant.ts';
import { ItemKeyError } from '../../../item-bank/items/key.ts';
import { RichTextError } from '../../../item-bank/markup/rich-text.ts';
import { XmlError } from '../../xml.ts';
import type { DocumentProblem } from '../export-errors.ts';
import type { Placement } from '../placement.ts';
import type { PublishedSchema } from '../validate/published.ts';
import { validateDocument } from '../validate/validate-document.ts';
import type { QtiVersion } from '../versions.ts';
import { KeyTooWideError } from '../write/gridded.ts';
import { FigureTooSmallError } from '../write/hotspots.ts';
import type { ImageFormat } from '../write/images.ts';
import { itemPath, type WrittenItem, writeItem, writeStimulus } from '../write/item.ts';
import { startsItemLine } from '../write/lines.ts';
import { writeShapedXml } from '../write/shaped-xml.ts';
import { packFiles, type ZipFile, type ZipSegment } from './write-zip.ts';

/** A run of items to write, check and compress. Plain data for a worker. */
export interface ItemBatch {
	readonly placements: readonly Placement[];
	readonly version: QtiVersion;
	readonly images: ImageFormat;
	readonly published: PublishedSchema | undefined;
}

/** What became of a batch. With any problem, nothing else counts. */
export interface WrittenBatch {
	readonly problems: readonly DocumentProblem[];
	/** Item documents, each followed by its figures when those are SVG. */
	readonly segment: ZipSegment;
	/** Figures still to be turned into PNG: path within the package and SVG text. */
	readonly pictures: readonly { readonly path: string; readonly svg: string }[];
}

/** Writes a batch of items: tree, text, checked text, compressed text. */
export function writeItemBatch(batch: ItemBatch): WrittenBatch {
	const problems: DocumentProblem[] = [];
	const files: ZipFile[] = [];
	const pictures: { readonly path: string; readonly svg: string }[] = [];
	for (const placement of batch.placements) {
		try {
			problems.push(...writePlaced(placement, batch, files, pictures));
		} catch (error) {
			problems.push(writingProblem(error, placement));
		}
	}
	if (problems.length > 0) return { problems, segment: packFiles([]), pictures: [] };
	return { problems, segment: packFiles(files), pictures };
}

function writePlaced(
	placement: Placement,
	batch: ItemBatch,
	files: ZipFile[],
	pictures: { readonly path: string; readonly svg: string }[],
): readonly DocumentProblem[] {
	const stimulus = writeStimulus(placement, batch.version, batch.images);
	const documents = [...(stimulus ? [stimulus] : []), writeItem(placement, batch.version, batch.images)];
	return documents.flatMap((document) => addDocument(document, placement, batch, files, pictures));
}

function addDocument(
	{ path, root, images }: WrittenItem,
	placement: Placement,
	batch: ItemBatch,
	files: ZipFile[],
	pictures: { readonly path: string; readonly svg: string }[],
): readonly DocumentProblem[] {
	const bytes = Buffer.from(writeShapedXml(root, { declaration: true, startsLine: startsItemLine }));
	const { problems, facts } = validateDocument({ path, xml: bytes, schema: batch.version }, batch.published);
	if (!facts) return problems.map((problem) => ({ ...problem, item: placement.record.id }));
	const shown = facts.references.filter(({ identifier }) => identifier === '');
	const isWhole = shown.every(({ href }, index) => `items/${href}` === images[index]?.path);
	invariant(isWhole && shown.length === images.length, `${path} shows the figures written with it`);
	files.push({ path, bytes });
	for (const image of images) {
		const svg = writeShapedXml(image.root, { declaration: true });
		if (batch.images === 'png') pictures.push({ path: image.path, svg });
		else files.push({ path: image.path, bytes: Buffer.from(svg) });
	}
	return [];
}

/** Texts and keys that cannot be written are the item's problems; anything else is our own fault and goes on. */
function writingProblem(error: unknown, placement: Placement): DocumentProblem {
	const file = itemPath(placement);
	const at = { path: file, file, line: undefined, item: placement.record.id };
	if (error instanceof XmlError) {
		const element = error.where.split('/').findLast((step) => !step.startsWith('@'));
		return { ...at, code: error.code, element, message: error.message };
	}
	if (
		error instanceof ItemKeyError ||
		error instanceof KeyTooWideError ||
		error instanceof FigureTooSmallError ||
		error instanceof RichTextError ||
		error instanceof ExpressionSyntaxError
	) {
		return { ...at, code: error.code, element: undefined, message: error.message };
	}
	throw error;
}
