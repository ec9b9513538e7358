import type { Kysely } from 'kysely';
import type { Tables } from './tables.ts';

/** What the parts of a store share. */
export interface StoreContext {
	readonly kysely: Kysely<Tables>;
	readonly clock: () => Date;
	/** Makes an id that no other has, of lower-case letters, digits and hyphens, 3 to 63 long. */
	readonly newId: () => string;
	/** Below this many hits a search collects and sorts them; from there on it walks through the bank in order. */
	readonly fewHits: number;
}
