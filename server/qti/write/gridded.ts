import { element } from '../../../item-bank/markup/tree.ts';
import { acceptedEntries, readEntry } from '../../../item-bank/responses/entry.ts';
import type { GriddedItem, GridProfile } from '../../../item-bank/types.ts';
import { variables } from '../identifiers.ts';
import { writeBlocks } from './blocks.ts';
import type { WritingDesk, WrittenInteraction } from './interaction.ts';
import { writeMapping } from './shares.ts';

/** A key that no entry on the grid of its form can spell. */
export class KeyTooWideError extends Error {
	readonly code = 'export-key-too-wide';

	constructor(value: number, profile: GridProfile) {
		super(`expected a key that fits the grid "${profile.id}" of ${profile.digitColumns} digits, found ${value}`);
		this.name = 'KeyTooWideError';
	}
}

/**
 * A gridded item as a text entry of base type string: every accepted spelling of the key is listed in the mapping, so that
 * the file itself says what is right and map_response scores it (README.md gives the reasons). Throws {@link KeyTooWideError}.
 */
export function writeGridded(
	item: GriddedItem,
	value: number,
	profile: GridProfile,
	desk: WritingDesk,
): WrittenInteraction {
	if (readEntry(String(value), profile).kind !== 'valid') throw new KeyTooWideError(value, profile);
	const entries = acceptedEntries(value, profile).map((spelling) => ({ key: spelling, value: '1' }));
	const declaration = { identifier: variables.response, cardinality: 'single', baseType: 'string' };
	const field = element('textEntryInteraction', {
		responseIdentifier: variables.response,
		expectedLength: profile.digitColumns + 1,
	});
	return {
		declarations: [
			element('responseDeclaration', declaration, [
				element('correctResponse', {}, [element('value', {}, [String(value)])]),
				writeMapping(entries),
			]),
		],
		body: [
			...writeBlocks(desk.stem, desk),
			element('p', {}, ['Answer: ', field, ...(item.unit === undefined ? [] : [` ${item.unit}`])]),
		],
		scoring: 'map_response',
	};
}
