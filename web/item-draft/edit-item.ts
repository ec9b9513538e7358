import type { Item } from '../../item-bank/types.ts';

/** A place in an item: names of fields and indices of lists from the outside in. */
export type Path = readonly (string | number)[];

/** The value at a place; undefined where there is none. */
export function valueAt(document: unknown, path: Path): unknown {
	let value = document;
	for (const step of path) {
		if (typeof value !== 'object' || value === null) return undefined;
		value = (value as Readonly<Record<string | number, unknown>>)[step];
	}
	return value;
}

/** The item with another value at a place; undefined takes the field away. The item itself stays as it is. */
export function changeAt(item: Item, path: Path, value: unknown): Item {
	return change(item, path, () => value) as Item;
}

/** The item with a value put into a list before an index. */
export function insertAt(item: Item, list: Path, index: number, value: unknown): Item {
	return change(item, list, (before) => (Array.isArray(before) ? before.toSpliced(index, 0, value) : [value])) as Item;
}

/** The item without one entry of a list. */
export function removeAt(item: Item, list: Path, index: number): Item {
	return change(item, list, (before) => (Array.isArray(before) ? before.toSpliced(index, 1) : before)) as Item;
}

/** The item with one entry of a list moved to another index, kept within the list. */
export function moveAt(item: Item, list: Path, from: number, to: number): Item {
	return change(item, list, (before) => {
		if (!Array.isArray(before) || to < 0 || to >= before.length) return before;
		return before.toSpliced(from, 1).toSpliced(to, 0, before[from]);
	}) as Item;
}

/** A place as a JSON pointer, as checks name it. */
export function printPath(path: Path): string {
	return path.map((step) => `/${step}`).join('');
}

function change(document: unknown, path: Path, alter: (before: unknown) => unknown): unknown {
	const [step, ...rest] = path;
	if (step === undefined) return alter(document);
	const holder = document as Readonly<Record<string | number, unknown>>;
	const value = change(holder[step], rest, alter);
	if (Array.isArray(document)) return document.with(Number(step), value);
	const { [step]: _before, ...others } = holder;
	if (value === undefined) return others;
	return { ...holder, [step]: value };
}
