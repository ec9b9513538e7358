import type { StemBlock } from '../../types.ts';
import { haladyna, type Rule } from '../rule.ts';

/** A stem without a paragraph asks nothing. */
export const stemQuestion: Rule = {
	severity: 'stop',
	guideline: haladyna(14),
	find: ({ item, parts }) => {
		const stems = item.kind === 'set' ? [{ stem: item.stem, path: '' }, ...parts.map(stemOf)] : parts.map(stemOf);
		return stems.flatMap(({ stem, path }) => {
			if (stem.some((block) => block.kind === 'paragraph')) return [];
			const message = 'expected a paragraph with the question or instruction, found none';
			return [{ code: 'stem-without-question', path: `${path}/stem`, message }];
		});
	},
};

function stemOf({ part, path }: { readonly part: { readonly stem: readonly StemBlock[] }; readonly path: string }): {
	readonly stem: readonly StemBlock[];
	readonly path: string;
} {
	return { stem: part.stem, path };
}
