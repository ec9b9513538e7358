import type { Item, ItemEntry, ItemHistory, ItemSaved } from '../../item-bank/types.ts';
import { ApiError } from '../api-client.ts';
import { callApi } from '../call-api.ts';
import { isAlike } from './compare-items.ts';

/** What came of saving: a version of the bank, or the newer version somebody else made meanwhile. */
export type Saving =
	| { readonly kind: 'saved'; readonly saved: ItemSaved }
	| { readonly kind: 'conflict'; readonly newest: ItemEntry };

/** One version of an item, the newest when none is named. */
export function fetchItem(id: string, version?: number): Promise<ItemEntry> {
	return callApi('GET /api/items/{id}', { path: { id }, query: version === undefined ? {} : { version } });
}

/** Every version of an item and what was done. */
export function fetchHistory(id: string): Promise<ItemHistory> {
	return callApi('GET /api/items/{id}/history', { path: { id } });
}

/**
 * Keeps an item as a new version on top of the one it was made from; 0 is an item the bank does not have yet. Doing it twice,
 * as after an answer that got lost, keeps it once. Throws ApiError.
 */
export async function saveItem(id: string, baseVersion: number, item: Item): Promise<Saving> {
	try {
		const saved =
			baseVersion === 0
				? await callApi('POST /api/items', { body: { id, item } })
				: await callApi('PUT /api/items/{id}', { path: { id }, body: { baseVersion, item } });
		return { kind: 'saved', saved };
	} catch (error) {
		const isTaken = error instanceof ApiError && (error.code === 'version-conflict' || error.code === 'id-taken');
		if (!isTaken) throw error;
		const newest = await fetchItem(id);
		const isOurs = newest.version === baseVersion + 1 && isAlike(newest.item, item);
		return isOurs ? { kind: 'saved', saved: { record: newest, problems: [] } } : { kind: 'conflict', newest };
	}
}

/** Approves a draft version. Throws ApiError, with everything that speaks against it. */
export function approveItem(id: string, version: number): Promise<ItemEntry> {
	return callApi('POST /api/items/{id}/approve', { path: { id }, body: { version } });
}

/** Retires a version. Throws ApiError. */
export function retireItem(id: string, version: number): Promise<ItemEntry> {
	return callApi('POST /api/items/{id}/retire', { path: { id }, body: { version } });
}

/** An id for an item made in this browser, in the spelling the bank takes. */
export function newItemId(): string {
	const letters = crypto.getRandomValues(new Uint8Array(10));
	return `item-${Array.from(letters, (byte) => (byte % 36).toString(36)).join('')}`;
}
