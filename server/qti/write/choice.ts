import type { ChoiceItem } from '../../../item-bank/types.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { declareResponse, identifyOptions, writeChoiceBody } from './options.ts';

/** A choice item as choiceInteraction with one choice, scored by match_correct. */
export function writeChoice(item: ChoiceItem, key: readonly string[], desk: WritingDesk): WrittenInteraction {
	return {
		declarations: [declareResponse('single', 'identifier', identifyOptions(item.options, key))],
		body: writeChoiceBody(item.options, 1, desk),
		scoring: 'match_correct',
	};
}
