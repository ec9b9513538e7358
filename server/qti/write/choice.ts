import type { ChoiceItem } from '../../../item-bank/types.ts';
import type { FigureWriter, WrittenInteraction } from './interaction.ts';
import { writeChoiceBody, writeChoiceDeclaration } from './options.ts';

/** A choice item as choiceInteraction with one choice, scored by match_correct. */
export function writeChoice(item: ChoiceItem, key: readonly string[], writeFigure: FigureWriter): WrittenInteraction {
	const parts = { stem: item.stem, options: item.options, key };
	return {
		declaration: writeChoiceDeclaration(parts, 'single'),
		body: writeChoiceBody(parts, 1, writeFigure),
		template: 'match_correct',
	};
}
