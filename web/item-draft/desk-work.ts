import type { Item, ItemEntry } from '../../item-bank/types.ts';
import { isAlike } from './compare-items.ts';
import { fetchItem } from './item-client.ts';
import { dropDraft, findDraft } from './keep-draft.ts';

/** An item on the desk. */
export interface DeskWork {
	readonly id: string;
	/** The newest version of the bank; undefined for an item it does not have yet. */
	readonly entry: ItemEntry | undefined;
	/** The version that the work changes; 0 for a new item. */
	readonly baseVersion: number;
	readonly item: Item;
	/** Somebody saved a newer version than the one that was changed. */
	readonly isBehind: boolean;
}

/** Puts an item on the desk: unsaved work of this browser where there is any, else the newest version. Throws ApiError. */
export async function openWork(id: string): Promise<DeskWork> {
	const draft = findDraft(id);
	if (draft?.baseVersion === 0) return { id, entry: undefined, baseVersion: 0, item: draft.item, isBehind: false };
	const entry = await fetchItem(id);
	if (!draft || isAlike(draft.item, entry.item)) {
		dropDraft(id);
		return { id, entry, baseVersion: entry.version, item: entry.item, isBehind: false };
	}
	const { baseVersion, item } = draft;
	return { id, entry, baseVersion, item, isBehind: entry.version > baseVersion };
}

/** Whether the desk holds work that the bank does not have. */
export function isUnsaved({ entry, item, isBehind }: DeskWork): boolean {
	return entry === undefined || isBehind || !isAlike(entry.item, item);
}
