import { printItemName } from '../../item-bank/items/item-name.ts';
import type { Form, FormDetails, ItemEntry } from '../../item-bank/types.ts';
import { bankChangedEvent } from '../api-client.ts';
import { callApi } from '../call-api.ts';
import { words } from '../messages/words.ts';
import { tell } from '../tell.ts';

/**
 * Puts an item at the end of a section of a form, as a new version of the form, and says so with a way to take it back (another
 * version, with what was there before). Throws ApiError when the bank refuses.
 */
export async function addToForm(details: FormDetails, entry: ItemEntry, section: number): Promise<void> {
	const { id, version, form: before } = details.record;
	const sections = before.sections.map((each, index) =>
		index === section ? { ...each, items: [...each.items, { item: entry.id, version: entry.version }] } : each,
	);
	const after: Form = { ...before, sections };
	const saved = await callApi('PUT /api/forms/{id}', { path: { id }, body: { baseVersion: version, form: after } });
	window.dispatchEvent(new Event(bankChangedEvent));
	const count = sections.reduce((sum, { items }) => sum + items.length, 0);
	tell(words.drawer.added(printItemName(entry.item.name), before.title, count), async () => {
		await callApi('PUT /api/forms/{id}', { path: { id }, body: { baseVersion: saved.version, form: before } });
		window.dispatchEvent(new Event(bankChangedEvent));
	});
}
