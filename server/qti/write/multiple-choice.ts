import type { MultipleChoiceItem } from '../../../item-bank/types.ts';
import type { FigureWriter, WrittenInteraction } from './interaction.ts';
import { writeChoiceBody, writeChoiceDeclaration } from './options.ts';

/**
 * A multiple-choice item as choiceInteraction without a limit (maxChoices 0), because a limit would tell how many options
 * are right. match_correct compares whole sets, which is all points or none.
 */
export function writeMultipleChoice(
	item: MultipleChoiceItem,
	key: readonly string[],
	writeFigure: FigureWriter,
): WrittenInteraction {
	const parts = { stem: item.stem, options: item.options, key };
	return {
		declaration: writeChoiceDeclaration(parts, 'multiple'),
		body: writeChoiceBody(parts, 0, writeFigure),
		template: 'match_correct',
	};
}
