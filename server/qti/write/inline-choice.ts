import { gapSides, printSigns } from '../../../item-bank/items/kinds/inline-choice.ts';
import { element } from '../../../item-bank/markup/tree.ts';
import type { InlineChoiceItem } from '../../../item-bank/types.ts';
import { optionIdentifier, variables } from '../identifiers.ts';
import { writeBlocks } from './blocks.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { declareResponse, identifyOptions } from './options.ts';

/**
 * An inline-choice item: below the stem one paragraph, the statement with inlineChoiceInteraction as its gap. All of it is
 * text, so that it is read aloud as one sentence.
 */
export function writeInlineChoice(
	item: InlineChoiceItem,
	key: readonly string[],
	desk: WritingDesk,
): WrittenInteraction {
	const [before, after] = gapSides(item);
	const choices = item.choices.map(({ math }, index) =>
		element('inlineChoice', { identifier: optionIdentifier(index) }, [printSigns(math)]),
	);
	const gap = element('inlineChoiceInteraction', { responseIdentifier: variables.response, shuffle: 'false' }, choices);
	const statement = [...(before === '' ? [] : [`${before} `]), gap, ...(after === '' ? [] : [` ${after}`])];
	return {
		declaration: declareResponse('single', 'identifier', identifyOptions(item.choices, key)),
		body: [...writeBlocks(desk.stem, desk.writeFigure), element('p', {}, statement)],
		template: 'match_correct',
	};
}
