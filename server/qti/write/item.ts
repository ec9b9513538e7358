import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { invariant } from '../../../item-bank/invariant.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { variables } from '../identifiers.ts';
import type { Placement } from '../placement.ts';
import { getVersionFacts, instanceNamespace, type QtiVersion } from '../versions.ts';
import { writeChoice } from './choice.ts';
import { writeExplanation } from './explanation.ts';
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

/** One item as a QTI document with the figures it shows. */
export interface WrittenItem {
	/** Path within the package. */
	readonly path: string;
	readonly root: MarkupElement;
	readonly images: readonly ItemImage[];
}

/** Path of an item within the package. */
export function itemPath(placement: Placement): string {
	return `items/${placement.stem}.xml`;
}

/**
 * Writes an item at its place as an assessmentItem. Throws ItemKeyError for an item without a computable key,
 * KeyTooWideError and FigureTooSmallError for one that cannot be answered as QTI.
 */
export function writeItem(placement: Placement, version: QtiVersion, format: ImageFormat): WrittenItem {
	const facts = getVersionFacts(version);
	const images: ItemImage[] = [];
	const writeFigure: FigureWriter = (figure, name) => {
		const drawing = drawFigure(figure);
		const file = imageReference(placement.stem, name, format);
		images.push({ path: `items/${file}`, root: drawing.root });
		const size = { width: Math.ceil(drawing.width), height: Math.ceil(drawing.height) };
		return element('img', { src: file, alt: describeFigure(figure), ...size });
	};
	const writePicture: PictureWriter = (drawing, name) => {
		const data = imageReference(placement.stem, name, format);
		const { root } = drawing;
		// Pictures get two pixels to each px; coordinates count on one.
		const half = { ...root.attributes, width: String(drawing.width / 2), height: String(drawing.height / 2) };
		images.push({ path: `items/${data}`, root: format === 'png' ? { ...root, attributes: half } : root });
		return { data, type: format === 'png' ? 'image/png' : 'image/svg+xml' };
	};
	const stem = [...placement.stimulus, ...placement.record.item.stem];
	const written = writeInteraction(placement, { stem, writeFigure, writePicture });
	const attributes = {
		xmlns: facts.namespace,
		'xmlns:xsi': instanceNamespace,
		'xsi:schemaLocation': `${facts.namespace} ${facts.location}`,
		identifier: placement.identifier,
		title: placement.title,
		'xml:lang': 'en',
		adaptive: 'false',
		timeDependent: 'false',
		toolName: 'Zeropair',
	};
	const root = element('assessmentItem', attributes, [
		written.declaration,
		writeFloat(variables.score, '0', written.template === undefined && version !== 'qti-2.1'),
		writeFloat(variables.maximum, '1'),
		element('itemBody', {}, written.body),
		...(written.template === undefined
			? []
			: [element('responseProcessing', { template: facts.templates + written.template })]),
	]);
	return { path: itemPath(placement), root, images };
}

/** An outcome declaration of one float with its default. That a person sets it is said where the version has a word for it. */
export function writeFloat(identifier: string, value: string, isRated = false): MarkupElement {
	const attributes = { identifier, cardinality: 'single', baseType: 'float' };
	return element('outcomeDeclaration', isRated ? { ...attributes, externalScored: 'human' } : attributes, [
		element('defaultValue', {}, [element('value', {}, [value])]),
	]);
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
		case 'gridded':
			invariant(key.kind === 'value' && placement.profile, 'a gridded item has a value and a grid');
			return writeGridded(item, key.value, placement.profile, desk);
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
