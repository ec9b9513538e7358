import { describeFigure } from '../../../item-bank/figures/describe-figure.ts';
import { drawFigure } from '../../../item-bank/figures/draw-figure.ts';
import { invariant } from '../../../item-bank/invariant.ts';
import { computeKey } from '../../../item-bank/items/key.ts';
import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import { variables } from '../identifiers.ts';
import type { Placement } from '../placement.ts';
import { getVersionFacts, instanceNamespace, type QtiVersion } from '../versions.ts';
import { writeChoice } from './choice.ts';
import { writeGridded } from './gridded.ts';
import { type ImageFormat, imageReference } from './images.ts';
import type { FigureWriter, WrittenInteraction } from './interaction.ts';
import { writeMultipleChoice } from './multiple-choice.ts';

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

/** Writes an item at its place as an assessmentItem. Throws ItemKeyError for an item without a computable key. */
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
	const written = writeInteraction(placement, writeFigure);
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
		writeFloat(variables.score, '0'),
		writeFloat(variables.maximum, '1'),
		element('itemBody', {}, written.body),
		element('responseProcessing', { template: facts.templates + written.template }),
	]);
	return { path: itemPath(placement), root, images };
}

/** An outcome declaration of one float with its default. */
export function writeFloat(identifier: string, value: string): MarkupElement {
	return element('outcomeDeclaration', { identifier, cardinality: 'single', baseType: 'float' }, [
		element('defaultValue', {}, [element('value', {}, [value])]),
	]);
}

function writeInteraction(placement: Placement, writeFigure: FigureWriter): WrittenInteraction {
	const { item } = placement.record;
	const key = computeKey(item);
	switch (item.kind) {
		case 'choice':
			invariant(key.kind === 'options', 'the key of a choice is an option');
			return writeChoice(item, key.options, writeFigure);
		case 'multiple-choice':
			invariant(key.kind === 'options', 'the key of a multiple choice is options');
			return writeMultipleChoice(item, key.options, writeFigure);
		case 'gridded':
			invariant(key.kind === 'value' && placement.profile, 'a gridded item has a value and a grid');
			return writeGridded(item, key.value, placement.profile, writeFigure);
		default:
			return item satisfies never;
	}
}
