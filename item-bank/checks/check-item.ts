import type { Problem } from '../problem.ts';
import type { Item } from '../types.ts';
import { readFacts } from './facts.ts';
import { stopRules } from './index.ts';

/**
 * Everything that stops an item that already fits its schema: an empty list means it may be approved. Problems come in
 * the order of the rules, then of the document.
 */
export function checkItem(item: Item): readonly Problem[] {
	const facts = readFacts(item);
	const problems: Problem[] = [];
	for (const rule of stopRules) problems.push(...rule.find(facts));
	return problems;
}
