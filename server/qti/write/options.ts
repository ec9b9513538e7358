import { element, type MarkupElement, type MarkupNode } from '../../../item-bank/markup/tree.ts';
import type { Option } from '../../../item-bank/types.ts';
import { optionIdentifier, variables } from '../identifiers.ts';
import { writeQuestion } from './blocks.ts';
import { writeSpokenMathematics, writeSpokenText } from './catalogs.ts';
import { optionImage } from './images.ts';
import type { WritingDesk } from './interaction.ts';

/** A response declaration by its correct values, in the order given. */
export function declareResponse(
	cardinality: 'single' | 'multiple' | 'ordered',
	baseType: 'identifier' | 'directedPair',
	correct: readonly string[],
	mapping: readonly MarkupElement[] = [],
): MarkupElement {
	const values = correct.map((value) => element('value', {}, [value]));
	return element('responseDeclaration', { identifier: variables.response, cardinality, baseType }, [
		element('correctResponse', {}, values),
		...mapping,
	]);
}

/** Platform identifiers of the options with the ids, in option order. */
export function identifyOptions(
	options: readonly { readonly id: string }[],
	ids: readonly string[],
): readonly string[] {
	return options.flatMap(({ id }, index) => (ids.includes(id) ? [optionIdentifier(index)] : []));
}

/** The stem and the choice interaction. */
export function writeChoiceBody(
	options: readonly Option[],
	maxChoices: number,
	desk: WritingDesk,
): readonly MarkupElement[] {
	const { above, prompt } = writeQuestion(desk);
	const attributes = { responseIdentifier: variables.response, shuffle: 'false', maxChoices, minChoices: 0 };
	return [...above, element('choiceInteraction', attributes, [...prompt, ...writeChoices(options, desk)])];
}

/** Options as the choices of an interaction, named A, B, C … */
export function writeChoices(options: readonly Option[], desk: WritingDesk): readonly MarkupElement[] {
	return options.map((option, index) => {
		const [spoken, content] = writeOptionContent(option, optionImage(index), desk);
		return element('simpleChoice', { identifier: optionIdentifier(index), ...spoken }, content);
	});
}

/** Attributes and content of an option; a figure takes the name given. */
export function writeOptionContent(
	{ content }: Option,
	imageName: string,
	{ writeFigure, support }: WritingDesk,
): readonly [attributes: Readonly<Record<string, string>>, content: readonly MarkupNode[]] {
	switch (content.kind) {
		case 'mathematics':
			return writeSpokenMathematics(content.math, support);
		case 'text':
			return writeSpokenText(content.text, support);
		case 'figure':
			return [{}, [writeFigure(content.figure, imageName)]];
	}
}
