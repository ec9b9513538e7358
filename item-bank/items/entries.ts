import type { Option, PartItem } from '../types.ts';

/** A list of options or entries inside an item, with its place as a JSON pointer. */
export interface EntryList {
	readonly path: string;
	readonly entries: readonly Option[];
}

/** What a student chooses from, orders or matches: none for kinds answered otherwise. */
export function entryListsOf(item: PartItem): readonly EntryList[] {
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice':
			return [{ path: '/options', entries: item.options }];
		case 'order':
			return [{ path: '/entries', entries: item.entries }];
		case 'match':
			return [
				{ path: '/left', entries: item.left },
				{ path: '/right', entries: item.right },
			];
		case 'gridded':
		case 'point':
		case 'inline-choice':
		case 'explanation':
			return [];
	}
}
