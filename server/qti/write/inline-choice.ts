import { gapSides, printSigns } from '../../../item-bank/items/kinds/inline-choice.ts';
import { element, type MarkupNode } from '../../../item-bank/markup/tree.ts';
import type { InlineChoiceItem } from '../../../item-bank/types.ts';
import { optionIdentifier, variables } from '../identifiers.ts';
import { writeBlocks } from './blocks.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { declareResponse, identifyOptions } from './options.ts';
import { speakPiece } from './speak-piece.ts';

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
	const above = writeBlocks(desk.stem, desk);
	const isValueMissing = item.choices.some(({ math }) => /\d/.test(math));
	const say = (piece: string, followsValue = false): Readonly<Record<string, string>> =>
		desk.support('spoken', () => speakPiece(piece, followsValue), piece);
	const choices = item.choices.map(({ math }, index) => {
		const shown = printSigns(math);
		return element('inlineChoice', { identifier: optionIdentifier(index), ...say(shown) }, [shown]);
	});
	const gap = element('inlineChoiceInteraction', { responseIdentifier: variables.response, shuffle: 'false' }, choices);
	const writeSide = (side: string, followsValue: boolean): readonly MarkupNode[] => {
		const spoken = say(side, followsValue);
		return side === '' ? [] : [Object.keys(spoken).length === 0 ? side : element('span', spoken, [side])];
	};
	const [first, last] = [writeSide(before, false), writeSide(after, isValueMissing)];
	const statement = [...first, ...(before === '' ? [] : [' ']), gap, ...(after === '' ? [] : [' ']), ...last];
	return {
		declarations: [declareResponse('single', 'identifier', identifyOptions(item.choices, key))],
		body: [...above, element('p', {}, joinTexts(statement))],
		scoring: 'match_correct',
	};
}

/** Texts next to each other as one, as a reader of the file finds them. */
function joinTexts(nodes: readonly MarkupNode[]): readonly MarkupNode[] {
	const joined: MarkupNode[] = [];
	for (const node of nodes) {
		const last = joined.at(-1);
		if (typeof node === 'string' && typeof last === 'string') joined.splice(-1, 1, last + node);
		else joined.push(node);
	}
	return joined;
}
