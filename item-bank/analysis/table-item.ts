import { findKey } from '../items/key.ts';
import type { ItemRecord } from '../items/record.ts';
import { readEntry } from '../responses/entry.ts';
import { decodeGrid, type Reading } from '../responses/grid.ts';
import type { GridProfile, Item, ItemResponse } from '../types.ts';
import type { TableItem } from './score-table.ts';

/** An item of the bank as the statistics see it; the form may set its points. */
export function tableItemOf(
	{ id, version, item }: Pick<ItemRecord, 'id' | 'version' | 'item'>,
	maximum: number = item.points,
): TableItem {
	const key = keyTexts(item);
	const options = optionIds(item);
	return {
		id,
		version,
		maximum,
		...(key === undefined ? {} : { key }),
		...(options === undefined ? {} : { options }),
	};
}

/** Ids of what a student marks one of; undefined for kinds answered otherwise. */
function optionIds(item: Item): readonly string[] | undefined {
	if (item.kind === 'choice') return item.options.map(({ id }) => id);
	return item.kind === 'inline-choice' ? item.choices.map(({ id }) => id) : undefined;
}

function keyTexts(item: Item): readonly string[] | undefined {
	const finding = findKey(item);
	if ('problems' in finding) return undefined;
	const { key } = finding;
	switch (key.kind) {
		case 'options':
			return item.kind === 'multiple-choice' ? [[...key.options].sort().join(' ')] : key.options;
		case 'value':
			return [String(key.value)];
		case 'order':
			return [key.order.join(' ')];
		case 'pairs':
			return [pairsText(key.pairs)];
		case 'rubric':
		case 'parts':
			return undefined;
		default:
			return key satisfies never;
	}
}

/**
 * How a response is kept as an answer in a table: an option id, several in alphabetical order with blanks between, a number
 * in decimal, an order or pairs of ids. Undefined for what was left out, for grids and entries that are no number, and
 * for explanations and sets, which are not compared as answers.
 */
export function answerTextOf(response: ItemResponse, profile: GridProfile): string | undefined {
	switch (response.kind) {
		case 'choice':
			return response.options.length === 0 ? undefined : [...response.options].sort().join(' ');
		case 'grid':
			return readingText(decodeGrid(response.columns, profile));
		case 'entry':
			return readingText(readEntry(response.text, profile));
		case 'point':
			return response.at === undefined ? undefined : String(response.at);
		case 'order':
			return response.order.length === 0 ? undefined : response.order.join(' ');
		case 'match':
			return response.pairs.length === 0 ? undefined : pairsText(response.pairs);
		case 'explanation':
		case 'set':
			return undefined;
		default:
			return response satisfies never;
	}
}

function readingText(reading: Reading): string | undefined {
	return reading.kind === 'valid' ? String(reading.value) : undefined;
}

function pairsText(pairs: readonly { readonly left: string; readonly right: string }[]): string {
	return pairs
		.map(({ left, right }) => `${left}=${right}`)
		.sort()
		.join(' ');
}
