import type { PatternId } from '../../patterns/pattern.ts';
import type { ModelType } from '../../types.ts';
import type { GroupProposal } from './class.ts';
import type { ItemPatterns } from './item-patterns.ts';

/** An item of the bank that could be used next, with the wrong ideas that show in its answers. */
export interface NextItem {
	readonly id: string;
	readonly version: number;
	readonly model: ModelType;
	readonly dok: number;
	readonly patterns: ItemPatterns;
}

/** Items to use next with a group. */
export interface NextItems {
	/** Whether one pattern is singled out by the answers of every student of the group. */
	readonly settled: boolean;
	/** probe: tells patterns apart that the answers so far do not; like: asks for the same idea again. */
	readonly why: 'probe' | 'like';
	readonly items: readonly NextItem[];
	/** Pairs of patterns that the probes together do not tell apart. */
	readonly left: number;
}

/** Items proposed for a group at most. */
const mostItems = 4;

/**
 * Items to use next with a group of students, of those given: while patterns are not told apart, items whose wrong answers tell them
 * apart, the fewest that do (greedily, most pairs first); once one pattern is singled out, items where it would show again and alone,
 * in as many model types as there are. Items whose answers can be guessed come last; ties go by id. Our own rule, no source.
 */
export function proposeItems(
	{ pattern, notToldApart }: Pick<GroupProposal, 'pattern' | 'notToldApart'>,
	candidates: readonly NextItem[],
): NextItems {
	if (notToldApart.length === 0) {
		return { settled: true, why: 'like', items: pickLike(pattern, candidates), left: 0 };
	}
	const ids = [pattern, ...notToldApart];
	const pairs = ids.flatMap((first, index) => ids.slice(index + 1).map((second) => [first, second] as const));
	const telling = candidates
		.map((item) => ({
			item,
			told: new Set(pairs.flatMap(([first, second], at) => (tells(item.patterns, first, second) ? [at] : []))),
		}))
		.filter(({ told }) => told.size > 0);
	const open = new Set(pairs.keys());
	const items: NextItem[] = [];
	while (open.size > 0 && items.length < mostItems) {
		const ranked = telling
			.map(({ item, told }) => ({ item, told, gain: [...told].filter((at) => open.has(at)).length }))
			.filter(({ gain }) => gain > 0)
			.sort(
				(a, b) =>
					b.gain - a.gain ||
					a.item.patterns.chance - b.item.patterns.chance ||
					b.told.size - a.told.size ||
					compareIds(a.item, b.item),
			);
		const [best] = ranked;
		if (best === undefined) break;
		items.push(best.item);
		for (const at of best.told) open.delete(at);
	}
	return { settled: false, why: 'probe', items, left: open.size };
}

/** Whether some wrong answer comes from one of two patterns and not from the other. */
function tells({ byAnswer, visible }: ItemPatterns, first: PatternId, second: PatternId): boolean {
	if (!visible.includes(first) && !visible.includes(second)) return false;
	for (const patterns of byAnswer.values()) if (patterns.includes(first) !== patterns.includes(second)) return true;
	return false;
}

function pickLike(pattern: PatternId, candidates: readonly NextItem[]): readonly NextItem[] {
	const showing = candidates
		.filter(({ patterns }) => patterns.visible.includes(pattern))
		.map((item) => ({ item, company: companyOf(item.patterns, pattern) }))
		.sort(
			(a, b) =>
				a.company - b.company ||
				a.item.dok - b.item.dok ||
				a.item.patterns.chance - b.item.patterns.chance ||
				compareIds(a.item, b.item),
		);
	const picked: NextItem[] = [];
	for (let left = showing.map(({ item }) => item); left.length > 0 && picked.length < mostItems; ) {
		// One of every model type in turn, the best first.
		const seen = new Set<ModelType>();
		const round = left.filter(({ model }) => !seen.has(model) && seen.add(model));
		picked.push(...round.slice(0, mostItems - picked.length));
		left = left.filter((item) => !round.includes(item));
	}
	return picked;
}

/** How many other patterns lead to the answer that the pattern leads to. */
function companyOf({ byAnswer }: ItemPatterns, pattern: PatternId): number {
	const others = [...byAnswer.values()]
		.filter((patterns) => patterns.includes(pattern))
		.map(({ length }) => length - 1);
	return Math.min(...others);
}

function compareIds(a: NextItem, b: NextItem): number {
	return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
