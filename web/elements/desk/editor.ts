import type { ReviewNote } from '../../../item-bank/checks/review-item.ts';
import type { Item } from '../../../item-bank/types.ts';
import { changeAt, insertAt, moveAt, type Path, removeAt } from '../../item-draft/edit-item.ts';
import { settleChange } from '../../item-draft/settle-change.ts';

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

/** An editor that puts every changed item, with what follows from the change, where it is told to. */
export function makeEditor(read: () => Item, notes: readonly ReviewNote[], put: (item: Item) => void): Editor {
	const settle = (alter: (item: Item) => Item, path: Path): void => {
		const item = read();
		put(settleChange(item, alter(item), path));
	};
	return {
		item: read(),
		notes,
		change: (path, value) =>
			settle((item) => (path.length === 0 ? (value as Item) : changeAt(item, path, value)), path),
		insert: (list, index, value) => settle((item) => insertAt(item, list, index, value), [...list, index]),
		remove: (list, index) => settle((item) => removeAt(item, list, index), [...list, index]),
		move: (list, from, to) => settle((item) => moveAt(item, list, from, to), [...list, to]),
	};
}
