import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { invariant } from '../../../item-bank/invariant.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { variables } from '../identifiers.ts';
import { type Placement, type SharedStimulus, stimulusBeside, stimulusWithin } from '../placement.ts';
import { getVersionFacts, instanceNamespace, type QtiVersion, templateAddress } from '../versions.ts';
import { renameToNewer } from '../vocabulary.ts';
import { writeBlocks } from './blocks.ts';
import { noSupport, openCatalogs, type SupportWriter } from './catalogs.ts';
import { writeChoice } from './choice.ts';
import { writeExplanation } from './explanation.ts';
import { writeFeedback } from './feedback.ts';
import { writeGridColumns } from './grid-columns.ts';
import { writeGridded } from './gridded.ts';
import { type ImageFormat, imageReference } from './images.ts';
import { writeInlineChoice } from './inline-choice.ts';
import type { FigureWriter, PictureWriter, WritingDesk, WrittenInteraction } from './interaction.ts';
import { writeMatch } from './match.ts';
import { writeMultipleChoice } from './multiple-choice.ts';
import { writeOrder } from './order.ts';
import { writePoint } from './point.ts';
import { writePointChoice } from './point-choice.ts';

/** A figure of an item, drawn but not yet written. */
export interface ItemImage {
	/** Path within the package. */
	readonly path: string;
	readonly root: MarkupElement;
}

/** One item, or what the parts of a set share, as a QTI document with the figures it shows. */
export interface WrittenItem {
	/** Path within the package. */
	readonly path: string;
	readonly root: MarkupElement;
	readonly images: readonly ItemImage[];
}

/** Path of an item, or of what the parts of a set share, within the package. */
export function itemPath({ stem }: Pick<Placement, 'stem'> | SharedStimulus): string {
	return `items/${stem}.xml`;
}

/**
 * Writes an item at its place as an assessmentItem. Throws ItemKeyError for an item without a computable key,
 * KeyTooWideError and FigureTooSmallError for one that cannot be answered as QTI.
 */
export function writeItem(placement: Placement, version: QtiVersion, format: ImageFormat): WrittenItem {
	const facts = getVersionFacts(version);
	const { images, writeFigure, writePicture } = openFigures(placement.stem, format);
	const book = facts.hasNewerNames ? openCatalogs() : undefined;
	const support = book?.support ?? noSupport;
	const stem = [...stimulusWithin(placement), ...placement.record.item.stem];
	const desk = { stem, writeFigure: writeFigure(support), writePicture, support };
	const interaction = writeInteraction(placement, desk);
	const { written, modal, rubric } = writeFeedback(placement, interaction, support);
	const { scoring } = written;
	const isRated = scoring === 'person' && version !== 'qti-2.1';
	const root = element('assessmentItem', writeRootAttributes(placement, version), [
		...written.declarations,
		writeFloat(variables.score, '0', isRated),
		writeFloat(variables.maximum, '1'),
		...(typeof scoring === 'string' ? [] : scoring.outcomes),
		...writeStimulusReference(placement.shared),
		element('itemBody', {}, [...placeStimulus(placement.shared), ...written.body, ...writeRubric(rubric, version)]),
		...(book?.write() ?? []),
		...writeScoring(scoring, version),
		...modal.map((feedback) => wrapContent(feedback, version)),
	]);
	return { path: itemPath(placement), root: facts.hasNewerNames ? renameToNewer(root) : root, images };
}

/** Writes what the parts of a set share as a document of its own, where the version has such; beside the first part. */
export function writeStimulus(placement: Placement, version: QtiVersion, format: ImageFormat): WrittenItem | undefined {
	const shared = stimulusBeside(placement);
	if (!shared) return undefined;
	const { images, writeFigure } = openFigures(shared.stem, format);
	const book = openCatalogs();
	const desk = { writeFigure: writeFigure(book.support), support: book.support };
	const { adaptive: _, timeDependent: __, ...attributes } = writeRootAttributes(shared, version);
	const root = element('assessmentStimulus', attributes, [
		element('stimulusBody', {}, writeBlocks(placement.stimulus, desk)),
		...book.write(),
	]);
	return { path: itemPath(shared), root: renameToNewer(root), images };
}

/** An outcome declaration of one float with its default. That a person sets it is said where the version has a word for it. */
export function writeFloat(identifier: string, value: string, isRated = false): MarkupElement {
	const attributes = { identifier, cardinality: 'single', baseType: 'float' };
	return element('outcomeDeclaration', isRated ? { ...attributes, externalScored: 'human' } : attributes, [
		element('defaultValue', {}, [element('value', {}, [value])]),
	]);
}

function writeRootAttributes(
	{ identifier, title }: Pick<Placement, 'identifier' | 'title'>,
	version: QtiVersion,
): Readonly<Record<string, string>> {
	const { namespace, location } = getVersionFacts(version);
	return {
		xmlns: namespace,
		'xmlns:xsi': instanceNamespace,
		'xsi:schemaLocation': `${namespace} ${location}`,
		identifier,
		title,
		'xml:lang': 'en',
		adaptive: 'false',
		timeDependent: 'false',
		toolName: 'Zeropair',
	};
}

function writeStimulusReference(shared: SharedStimulus | undefined): readonly MarkupElement[] {
	if (!shared) return [];
	const { identifier, title, stem } = shared;
	return [element('assessmentStimulusRef', { identifier, href: `${stem}.xml`, title })];
}

/** Where the shared stimulus goes, for platforms that ask; from memory of the QTI 3.0 implementation guide. */
function placeStimulus(shared: SharedStimulus | undefined): readonly MarkupElement[] {
	if (!shared) return [];
	return [element('div', { class: 'qti-shared-stimulus', 'data-stimulus-idref': shared.identifier })];
}

function writeScoring(scoring: WrittenInteraction['scoring'], version: QtiVersion): readonly MarkupElement[] {
	if (scoring === 'person') return [];
	if (typeof scoring !== 'string') return [element('responseProcessing', {}, scoring.rules)];
	return [element('responseProcessing', { template: templateAddress(version, scoring) })];
}

/** Levels of a rubric for whoever scores, where they were asked for. QTI 3.0 says what a rubric is for, 2.x only to whom. */
function writeRubric(levels: readonly MarkupElement[], version: QtiVersion): readonly MarkupElement[] {
	if (levels.length === 0) return [];
	const use = getVersionFacts(version).hasNewerNames ? { use: 'scoring' } : {};
	return [wrapContent(element('rubricBlock', { ...use, view: 'scorer' }, levels), version)];
}

/** What feedback and rubrics hold stands in a body of its own in QTI 3.0, and directly within them in 2.x. */
function wrapContent(holder: MarkupElement, version: QtiVersion): MarkupElement {
	if (!getVersionFacts(version).hasNewerNames) return holder;
	return element(holder.name, holder.attributes, [element('contentBody', {}, holder.children)]);
}

interface FigureDesk {
	/** In the order they were drawn. */
	readonly images: readonly ItemImage[];
	readonly writeFigure: (support: SupportWriter) => FigureWriter;
	readonly writePicture: PictureWriter;
}

function openFigures(stem: string, format: ImageFormat): FigureDesk {
	const images: ItemImage[] = [];
	return {
		images,
		writeFigure: (support) => (figure, name) => {
			const drawing = drawFigure(figure);
			const file = imageReference(stem, name, format);
			images.push({ path: `items/${file}`, root: drawing.root });
			const size = { width: Math.ceil(drawing.width), height: Math.ceil(drawing.height) };
			const alt = describeFigure(figure);
			return element('img', { src: file, alt, ...size, ...support('long-description', () => alt, '') });
		},
		writePicture: (drawing, name) => {
			const data = imageReference(stem, name, format);
			const { root } = drawing;
			// Pictures get two pixels to each px; coordinates count on one.
			const half = { ...root.attributes, width: String(drawing.width / 2), height: String(drawing.height / 2) };
			images.push({ path: `items/${data}`, root: format === 'png' ? { ...root, attributes: half } : root });
			return { data, type: format === 'png' ? 'image/png' : 'image/svg+xml' };
		},
	};
}

function writeInteraction(placement: Placement, desk: WritingDesk): WrittenInteraction {
	const { item } = placement.record;
	const key = computeKey(item);
	switch (item.kind) {
		case 'choice':
			invariant(key.kind === 'options', 'the key of a choice is an option');
			return writeChoice(item, key.options, desk);
		case 'multiple-choice':
			invariant(key.kind === 'options', 'the key of a multiple choice is options');
			return writeMultipleChoice(item, key.options, desk);
		case 'gridded': {
			invariant(key.kind === 'value' && placement.profile, 'a gridded item has a value and a grid');
			const write = placement.gridStyle === 'columns' ? writeGridColumns : writeGridded;
			return write(item, key.value, placement.profile, desk);
		}
		case 'point':
			invariant(key.kind === 'value', 'the key of a point is a value');
			return placement.pointStyle === 'choice'
				? writePointChoice(item, key.value, desk)
				: writePoint(item, key.value, desk);
		case 'order':
			invariant(key.kind === 'order', 'the key of an order is an order');
			return writeOrder(item, key.order, desk);
		case 'match':
			invariant(key.kind === 'pairs', 'the key of a match is pairs');
			return writeMatch(item, key.pairs, desk);
		case 'inline-choice':
			invariant(key.kind === 'options', 'the key of an inline choice is an option');
			return writeInlineChoice(item, key.options, desk);
		case 'explanation':
			return writeExplanation(item, desk);
		default:
			return item satisfies never;
	}
}
