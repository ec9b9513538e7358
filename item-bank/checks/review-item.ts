import type { Item } from '../types.ts';
import { readFacts } from './facts.ts';
import { adviceRules, stopRules } from './index.ts';
import type { ReviewNote } from './rule.ts';

export type { Guideline, ReviewNote } from './rule.ts';

/** All that the rules of item writing say of an item: what stops it first, then advice for a person to judge. */
export function reviewItem(item: Item): readonly ReviewNote[] {
	const facts = readFacts(item);
	return [...stopRules, ...adviceRules].flatMap(({ severity, guideline, find }) =>
		find(facts).map((problem): ReviewNote => ({ severity, ...problem, guideline })),
	);
}
