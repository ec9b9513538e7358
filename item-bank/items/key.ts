import type { Problem } from '../problem.ts';
import type { Item, PartItem } from '../types.ts';
import { ContentError } from './compute.ts';
import type { ItemKey, KeyFinding, PartKey } from './item-key.ts';
import { findRubric } from './kinds/explanation.ts';
import { findGriddedKey } from './kinds/gridded.ts';
import { findInlineKey } from './kinds/inline-choice.ts';
import { findMatchKey } from './kinds/match.ts';
import { findOptionKey } from './kinds/options.ts';
import { findOrderKey } from './kinds/order.ts';
import { findPointKey } from './kinds/point.ts';

export type { ItemKey, KeyFinding, PartKey };

/** Thrown where a key is needed of an item that has none. */
export class ItemKeyError extends Error {
	readonly code = 'item-without-key';
	readonly problems: readonly Problem[];

	constructor(problems: readonly Problem[]) {
		super(`no key can be computed: ${problems.map((problem) => problem.message).join('; ')}`);
		this.problems = problems;
	}
}

/** The computed key. Throws {@link ItemKeyError} for an item that {@link findKey} finds problems with. */
export function computeKey(item: PartItem): PartKey;
export function computeKey(item: Item): ItemKey;
export function computeKey(item: Item): ItemKey {
	const finding = findKey(item);
	if ('problems' in finding) throw new ItemKeyError(finding.problems);
	return finding.key;
}

/** Computes the key from the item's expression, rule or figure, and compares it with the key the author typed, if any. */
export function findKey(item: Item): KeyFinding {
	if (item.kind !== 'set') return findPartKey(item);
	const findings = item.parts.map(findPartKey);
	const problems = findings.flatMap((finding, index) =>
		'problems' in finding
			? finding.problems.map((problem) => ({ ...problem, path: `/parts/${index}${problem.path}` }))
			: [],
	);
	if (problems.length > 0) return { problems };
	return { key: { kind: 'parts', parts: findings.flatMap((finding) => ('key' in finding ? [finding.key] : [])) } };
}

function findPartKey(item: PartItem): KeyFinding<PartKey> {
	try {
		return findByKind(item);
	} catch (error) {
		if (error instanceof ContentError) return { problems: [error.problem] };
		throw error;
	}
}

function findByKind(item: PartItem): KeyFinding<PartKey> {
	switch (item.kind) {
		case 'choice':
		case 'multiple-choice':
			return findOptionKey(item);
		case 'gridded':
			return findGriddedKey(item);
		case 'point':
			return findPointKey(item);
		case 'order':
			return findOrderKey(item);
		case 'match':
			return findMatchKey(item);
		case 'inline-choice':
			return findInlineKey(item);
		case 'explanation':
			return findRubric(item);
	}
}
