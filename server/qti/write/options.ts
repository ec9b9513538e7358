import { printRichText } from '../../../item-bank/markup/rich-text.ts';
import { element, type MarkupElement, type MarkupNode } from '../../../item-bank/markup/tree.ts';
import type { Option, Stem } from '../../../item-bank/types.ts';
import { optionIdentifier, variables } from '../identifiers.ts';
import { writeBlocks, writeMathematics } from './blocks.ts';
import { optionImage } from './images.ts';
import type { FigureWriter } from './interaction.ts';

/** What choice and multiple choice share. */
export interface ChoiceParts {
	readonly stem: Stem;
	readonly options: readonly Option[];
	/** Ids of the right options. */
	readonly key: readonly string[];
}

/** The response declaration of a choice: the key by platform identifier, in option order. */
export function writeChoiceDeclaration(parts: ChoiceParts, cardinality: 'single' | 'multiple'): MarkupElement {
	const values = parts.options.flatMap((option, index) =>
		parts.key.includes(option.id) ? [element('value', {}, [optionIdentifier(index)])] : [],
	);
	return element('responseDeclaration', { identifier: variables.response, cardinality, baseType: 'identifier' }, [
		element('correctResponse', {}, values),
	]);
}

/**
 * The stem and the choice interaction. A stem that ends with a paragraph ends with its question: that paragraph becomes
 * the prompt, which readers announce together with the options.
 */
export function writeChoiceBody(
	parts: ChoiceParts,
	maxChoices: number,
	writeFigure: FigureWriter,
): readonly MarkupElement[] {
	const last = parts.stem.at(-1);
	const prompt = last?.kind === 'paragraph' ? [element('prompt', {}, [printRichText(last.text)])] : [];
	const above = writeBlocks(prompt.length > 0 ? parts.stem.slice(0, -1) : parts.stem, writeFigure);
	const choices = parts.options.map((option, index) =>
		element('simpleChoice', { identifier: optionIdentifier(index) }, [writeOptionContent(option, index, writeFigure)]),
	);
	const attributes = { responseIdentifier: variables.response, shuffle: 'false', maxChoices, minChoices: 0 };
	return [...above, element('choiceInteraction', attributes, [...prompt, ...choices])];
}

function writeOptionContent(option: Option, index: number, writeFigure: FigureWriter): MarkupNode {
	const { content } = option;
	switch (content.kind) {
		case 'mathematics':
			return writeMathematics(content.math);
		case 'text':
			return printRichText(content.text);
		case 'figure':
			return writeFigure(content.figure, optionImage(index));
	}
}
