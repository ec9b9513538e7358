import type { Problem } from '../problem.ts';

/** The right answer of one item that is no set. */
export type PartKey =
	/** Option ids in option order. */
	| { readonly kind: 'options'; readonly options: readonly string[] }
	| { readonly kind: 'value'; readonly value: number }
	/** Entry ids in the right order. */
	| { readonly kind: 'order'; readonly order: readonly string[] }
	/** The partner of each left entry, in left order. */
	| { readonly kind: 'pairs'; readonly pairs: readonly { readonly left: string; readonly right: string }[] }
	/** No computation decides: a scorer rates by the rubric. */
	| { readonly kind: 'rubric' };

/** The right answer of an item. */
export type ItemKey = PartKey | { readonly kind: 'parts'; readonly parts: readonly PartKey[] };

/** A key, or why there is none. */
export type KeyFinding<Key = ItemKey> = { readonly key: Key } | { readonly problems: readonly Problem[] };

/** The key unless there are problems. */
export function keyUnless<Key>(problems: readonly Problem[], key: Key): KeyFinding<Key> {
	return problems.length > 0 ? { problems } : { key };
}

/** A typed key that differs from the computed one, with both. */
export function checkTyped(computed: string, typed: string | undefined, whose: string): readonly Problem[] {
	if (typed === undefined || typed === computed) return [];
	return [{ code: 'key-mismatch', path: '/key', message: `${whose} ${computed}, but the key says ${typed}` }];
}
