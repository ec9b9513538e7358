import { element, type MarkupElement } from '../../../item-bank/markup/tree.ts';
import type { MatchItem, MatchPair, Option } from '../../../item-bank/types.ts';
import { entryIdentifier, variables } from '../identifiers.ts';
import { writeQuestion } from './blocks.ts';
import { entryImage } from './images.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { declareResponse, writeOptionContent } from './options.ts';
import { writeMapping, writeShare } from './shares.ts';

/**
 * A match item as matchInteraction in which every entry is used at most once. match_correct compares whole sets of pairs;
 * with credit in parts every right pair adds a share, and a wrong one costs nothing, as in the bank.
 */
export function writeMatch(item: MatchItem, key: readonly MatchPair[], desk: WritingDesk): WrittenInteraction {
	const { above, prompt } = writeQuestion(desk);
	const pairs = key.map((pair) => identifyPair(item, pair));
	const share = writeShare(pairs.length);
	const isShared = item.credit === 'parts';
	const mapping = isShared ? [writeMapping(pairs.map((pair) => ({ key: pair, value: share })))] : [];
	const attributes = { responseIdentifier: variables.response, shuffle: 'false', maxAssociations: item.left.length };
	const interaction = element('matchInteraction', attributes, [
		...prompt,
		writeSet('left', item.left, desk),
		writeSet('right', item.right, desk),
	]);
	return {
		declarations: [declareResponse('multiple', 'directedPair', pairs, mapping)],
		body: [...above, interaction],
		scoring: isShared ? 'map_response' : 'match_correct',
	};
}

/** A pair as a platform holds it: L2 R4. */
export function identifyPair(item: MatchItem, { left, right }: MatchPair): string {
	const from = item.left.findIndex(({ id }) => id === left);
	const to = item.right.findIndex(({ id }) => id === right);
	return `${entryIdentifier('left', from)} ${entryIdentifier('right', to)}`;
}

function writeSet(side: 'left' | 'right', entries: readonly Option[], desk: WritingDesk): MarkupElement {
	const choices = entries.map((entry, index) => {
		const [spoken, content] = writeOptionContent(entry, entryImage(side, index), desk);
		const attributes = { identifier: entryIdentifier(side, index), matchMax: 1, ...spoken };
		return element('simpleAssociableChoice', attributes, content);
	});
	return element('simpleMatchSet', {}, choices);
}
