import type { ItemRecord } from '../../item-bank/items/record.ts';
import type { ChoiceItem, GriddedItem, Item, MultipleChoiceItem } from '../../item-bank/types.ts';
import type { DocumentProblem } from './export-errors.ts';

/** The kinds of item that are written as QTI. */
export type ExportableItem = ChoiceItem | MultipleChoiceItem | GriddedItem;

/** An item version that can be written. */
export interface ExportableRecord extends ItemRecord {
	readonly item: ExportableItem;
}

/** Whether QTI is written for an item of this kind. */
export function isExportable(item: Item): item is ExportableItem {
	return item.kind === 'choice' || item.kind === 'multiple-choice' || item.kind === 'gridded';
}

/** What keeps an item from being written as QTI at all: its kind, or a way of giving credit that the files would not repeat. */
export function checkExportable({ id, item }: ItemRecord, file: string): readonly DocumentProblem[] {
	const at = { path: file, file, line: undefined, element: undefined, item: id };
	if (!isExportable(item)) {
		const message = `expected choice, multiple-choice or gridded, found an item of kind ${item.kind}`;
		return [{ ...at, code: 'export-kind-unsupported', message }];
	}
	if (item.kind === 'multiple-choice' && item.credit === 'parts') {
		const message = 'expected credit for the whole answer, found credit in parts';
		return [{ ...at, code: 'export-credit-unsupported', message }];
	}
	return [];
}
