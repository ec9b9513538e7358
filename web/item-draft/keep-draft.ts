import type { Item } from '../../item-bank/types.ts';

/** Unsaved work on an item. */
export interface Draft {
	/** The version of the bank it changes; 0 for an item the bank does not have yet. */
	readonly baseVersion: number;
	readonly item: Item;
	/** ISO 8601. */
	readonly at: string;
}

const prefix = 'zp-draft-';

/** The unsaved work on an item in this browser. */
export function findDraft(id: string): Draft | undefined {
	const text = localStorage.getItem(prefix + id);
	if (text === null) return undefined;
	try {
		const draft = JSON.parse(text) as Draft;
		return typeof draft.baseVersion === 'number' && typeof draft.item?.kind === 'string' ? draft : undefined;
	} catch {
		return undefined;
	}
}

/** Keeps unsaved work in this browser, so that it outlives the page. False where the browser has no room. */
export function keepDraft(id: string, draft: Draft): boolean {
	try {
		localStorage.setItem(prefix + id, JSON.stringify(draft));
		return true;
	} catch {
		return false;
	}
}

/** Forgets the unsaved work on an item, once it is saved or thrown away. */
export function dropDraft(id: string): void {
	localStorage.removeItem(prefix + id);
}

/** Ids of all items with unsaved work, the latest first. */
export function listDrafts(): readonly { readonly id: string; readonly draft: Draft }[] {
	const ids = Object.keys(localStorage).flatMap((name) => (name.startsWith(prefix) ? [name.slice(prefix.length)] : []));
	return ids
		.flatMap((id) => {
			const draft = findDraft(id);
			return draft ? [{ id, draft }] : [];
		})
		.sort((a, b) => b.draft.at.localeCompare(a.draft.at));
}
