import { element } from '../../../item-bank/markup/tree.ts';
import type { OrderItem } from '../../../item-bank/types.ts';
import { optionIdentifier, variables } from '../identifiers.ts';
import { writeQuestion } from './blocks.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { declareResponse, writeChoices } from './options.ts';

/** An order item as orderInteraction over all its entries, as they stand in the bank; match_correct compares whole orders. */
export function writeOrder(item: OrderItem, key: readonly string[], desk: WritingDesk): WrittenInteraction {
	const { above, prompt } = writeQuestion(desk);
	const order = key.map((id) => optionIdentifier(item.entries.findIndex((entry) => entry.id === id)));
	const interaction = element('orderInteraction', { responseIdentifier: variables.response, shuffle: 'false' }, [
		...prompt,
		...writeChoices(item.entries, desk),
	]);
	return {
		declarations: [declareResponse('ordered', 'identifier', order)],
		body: [...above, interaction],
		scoring: 'match_correct',
	};
}
