import type { Item } from '../types.ts';

/** Where a rule of item writing comes from. */
export interface Guideline {
	readonly source: string;
	/** Number in the source's list. */
	readonly number?: number;
	/** True where number or wording is from memory, to be confirmed. */
	readonly isFromMemory?: boolean;
}

/** What a rule says of an item. A stop keeps it from approval; advice is for a person to judge. */
export interface ReviewNote {
	readonly severity: 'stop' | 'advise';
	readonly code: string;
	/** JSON pointer into the item. */
	readonly path: string;
	readonly message: string;
	readonly guideline: Guideline;
}

/** What a rule finds: the rest of the note is the rule's own. */
export interface Finding {
	readonly path: string;
	readonly message: string;
}

/** One rule of item writing that asks for a look and never stops an item. */
export interface ReviewRule {
	/** Kebab-case and permanent. */
	readonly code: string;
	readonly guideline: Guideline;
	/** What the rule finds in an item, in document order. */
	find(item: Item): readonly Finding[];
}

const taxonomy = 'Haladyna, Downing and Rodriguez 2002';

/** A guideline of the taxonomy of 31 item-writing guidelines; only 20, 21, 23 and 30 were confirmed, the others are from memory. */
export function haladyna(number: number): Guideline {
	const isConfirmed = [20, 21, 23, 30].includes(number);
	return { source: taxonomy, number, ...(isConfirmed ? {} : { isFromMemory: true }) };
}

/** A rule that many departments follow and no source was found for. */
export const commonPractice: Guideline = { source: 'common practice, no source' };
