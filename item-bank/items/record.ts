import type { Form, Item } from '../types.ts';

/** Where an item stands: drafts are open to change by new versions, approved ones count as supply, retired ones stay readable. */
export type ItemStatus = 'draft' | 'approved' | 'retired';

/** One immutable version of an item in the bank. */
export interface ItemRecord {
	readonly id: string;
	readonly version: number;
	readonly status: ItemStatus;
	readonly item: Item;
}

/** One immutable version of a form in the bank. */
export interface FormRecord {
	readonly id: string;
	readonly version: number;
	readonly form: Form;
}
