import type { Problem } from '../problem.ts';
import type { ItemFacts } from './facts.ts';

/** Where a rule of item writing comes from. */
export interface Guideline {
	readonly source: string;
	/** Number in the source's list. */
	readonly number?: number;
	/** True where number or wording is from memory, to be confirmed. */
	readonly isFromMemory?: boolean;
}

/** A stop keeps an item from approval, so it must be certain; advice is for a person to judge. */
export type Severity = 'stop' | 'advise';

/** What a rule says of an item or a form. */
export interface ReviewNote extends Problem {
	readonly severity: Severity;
	readonly guideline: Guideline;
}

/** One rule of item writing. */
export interface Rule {
	readonly severity: Severity;
	readonly guideline: Guideline;
	/** What the rule has to say, in document order; codes are permanent, and those of advice begin with review-. */
	find(facts: ItemFacts): readonly Problem[];
}

const taxonomy = 'Haladyna, Downing and Rodriguez 2002';
const confirmed: readonly number[] = [20, 21, 23, 30];

/** A guideline of the taxonomy of 31 item-writing guidelines; only 20, 21, 23 and 30 were confirmed, the others are from memory. */
export function haladyna(number: number): Guideline {
	return { source: taxonomy, number, ...(confirmed.includes(number) ? {} : { isFromMemory: true }) };
}

/** A rule that many departments follow and no source was found for. */
export const commonPractice: Guideline = { source: 'common practice, no source' };
