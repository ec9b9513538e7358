import type { ItemRecord } from '../../item-bank/items/record.ts';
import type { PartItem } from '../../item-bank/types.ts';

/** What is written as one QTI item: an item, or one part of a set. */
export type ExportableItem = PartItem;

/** An item version that is written as one QTI item; of a set, with one of its parts in the place of the item. */
export interface ExportableRecord extends ItemRecord {
	readonly item: ExportableItem;
}

/** How a point on a number line is answered: a hotspot on each tick, or a choice among lettered points. */
export type PointStyle = 'hotspot' | 'choice';

/** How a gridded item is answered: a number typed in a field, or one list of marks for each column of the answer grid. */
export type GridStyle = 'number' | 'columns';
