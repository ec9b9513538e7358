import { element } from '../../../item-bank/markup/tree.ts';
import { acceptedEntries } from '../../../item-bank/responses/entry.ts';
import type { GriddedItem, GridProfile } from '../../../item-bank/types.ts';
import { variables } from '../identifiers.ts';
import { writeBlocks } from './blocks.ts';
import type { FigureWriter, WrittenInteraction } from './interaction.ts';

/**
 * A gridded item as a text entry of base type string: every accepted spelling of the key is listed in the mapping, so that
 * the file itself says what is right and map_response scores it (README.md gives the reasons).
 */
export function writeGridded(
	item: GriddedItem,
	value: number,
	profile: GridProfile,
	writeFigure: FigureWriter,
): WrittenInteraction {
	const entries = acceptedEntries(value, profile).map((spelling) =>
		element('mapEntry', { mapKey: spelling, mappedValue: '1', caseSensitive: 'false' }),
	);
	const declaration = { identifier: variables.response, cardinality: 'single', baseType: 'string' };
	const field = element('textEntryInteraction', {
		responseIdentifier: variables.response,
		expectedLength: profile.digitColumns + 1,
	});
	return {
		declaration: element('responseDeclaration', declaration, [
			element('correctResponse', {}, [element('value', {}, [String(value)])]),
			element('mapping', { lowerBound: '0', upperBound: '1', defaultValue: '0' }, entries),
		]),
		body: [
			...writeBlocks(item.stem, writeFigure),
			element('p', {}, ['Answer: ', field, ...(item.unit === undefined ? [] : [` ${item.unit}`])]),
		],
		template: 'map_response',
	};
}
