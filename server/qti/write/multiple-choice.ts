import type { MultipleChoiceItem } from '../../../item-bank/types.ts';
import { optionIdentifier } from '../identifiers.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { declareResponse, identifyOptions, writeChoiceBody } from './options.ts';
import { writeMapping, writeShare } from './shares.ts';

/**
 * A multiple-choice item as choiceInteraction without a limit (maxChoices 0), because a limit would tell how many options
 * are right. match_correct compares whole sets, which is all points or none; with credit in parts every right option adds a
 * share and every wrong one takes it away, never below 0.
 */
export function writeMultipleChoice(
	item: MultipleChoiceItem,
	key: readonly string[],
	desk: WritingDesk,
): WrittenInteraction {
	const right = identifyOptions(item.options, key);
	const body = writeChoiceBody(item.options, 0, desk);
	if (item.credit !== 'parts') {
		return { declarations: [declareResponse('multiple', 'identifier', right)], body, scoring: 'match_correct' };
	}
	const share = writeShare(key.length);
	const mapping = writeMapping(
		item.options.map(({ id }, index) => ({
			key: optionIdentifier(index),
			value: key.includes(id) ? share : `-${share}`,
		})),
	);
	return {
		declarations: [declareResponse('multiple', 'identifier', right, [mapping])],
		body,
		scoring: 'map_response',
	};
}
