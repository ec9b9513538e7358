import { positionsOf } from '../../item-bank/forms/check-form.ts';
import type { FindItem } from '../../item-bank/forms/compare-forms.ts';
import { printItemName } from '../../item-bank/items/item-name.ts';
import type { Form, ItemEntry } from '../../item-bank/types.ts';
import { ApiError } from '../api-client.ts';
import { callApi } from '../call-api.ts';

/** The item versions a desk has read so far. */
export class KnownItems {
	private readonly entries = new Map<string, ItemEntry>();

	/** The item of a version, or undefined. */
	readonly find: FindItem = (id, version) => this.findEntry(id, version)?.item;

	/** A version with its status, or undefined. */
	findEntry(id: string, version: number): ItemEntry | undefined {
		return this.entries.get(`${id} ${version}`);
	}

	/** The name of an item as it is printed; its id where it is not known. */
	nameOf({ item, version }: { readonly item: string; readonly version: number }): string {
		const found = this.find(item, version);
		return found ? printItemName(found.name) : item;
	}

	/** Everything known. */
	all(): readonly ItemEntry[] {
		return [...this.entries.values()];
	}

	/** Adds to what is known. */
	learn(entries: readonly ItemEntry[]): void {
		for (const entry of entries) this.entries.set(`${entry.id} ${entry.version}`, entry);
	}

	/** Reads the items of a form that no answer has brought yet; those the bank lacks stay unknown. Throws ApiError. */
	async readMissing(form: Form): Promise<void> {
		const missing = positionsOf(form).filter(({ entry }) => !this.find(entry.item, entry.version));
		const read = await Promise.all(
			missing.map(({ entry: { item, version } }) =>
				callApi('GET /api/items/{id}', { path: { id: item }, query: { version } }).catch((error: unknown) => {
					if (error instanceof ApiError && error.code === 'not-found') return undefined;
					throw error;
				}),
			),
		);
		this.learn(read.filter((entry) => entry !== undefined));
	}
}
