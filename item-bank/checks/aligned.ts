import type { ItemText } from '../items/texts.ts';
import type { Alignment } from '../types.ts';
import type { ItemFacts } from './facts.ts';

/** Something with alignments of its own: the item, or a part of a set. */
export interface Aligned {
	readonly alignments: readonly Alignment[];
	/** JSON pointer of what is aligned. */
	readonly path: string;
	readonly texts: readonly ItemText[];
}

/** The item first, then the parts of a set. */
export function alignedIn({ item, parts, texts }: ItemFacts): readonly Aligned[] {
	const whole = { alignments: item.alignments, path: '', texts };
	if (item.kind !== 'set') return [whole];
	const inside = parts.map(({ part, path }) => ({
		alignments: part.alignments,
		path,
		texts: texts.filter((text) => text.path.startsWith(`${path}/`)),
	}));
	return [whole, ...inside];
}
