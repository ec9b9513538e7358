import type { ReviewNote } from '../../../item-bank/checks/review-item.ts';
import type { Item } from '../../../item-bank/types.ts';
import type { Path } from '../../item-draft/edit-item.ts';

/** What fields need to show and change an item. */
export interface Editor {
	readonly item: Item;
	/** What the checks say of the item. */
	readonly notes: readonly ReviewNote[];
	/** Changes what stands at a place; undefined takes it away. */
	readonly change: (path: Path, value: unknown) => void;
	/** Puts a value into a list. */
	readonly insert: (list: Path, index: number, value: unknown) => void;
	readonly remove: (list: Path, index: number) => void;
	readonly move: (list: Path, from: number, to: number) => void;
}
