import { entryListsOf } from '../items/entries.ts';
import { partsOf } from '../items/parts.ts';
import type { Item } from '../types.ts';

/** Words a student reads in an item, numbers and signs included as one word each; figures count nothing. */
export function countWords(item: Item): number {
	const texts = item.stem.flatMap((block): readonly string[] => {
		switch (block.kind) {
			case 'paragraph':
				return [block.text];
			case 'mathematics':
				return [block.math];
			case 'figure':
				return [];
			case 'table':
				return [block.caption ?? '', ...block.header, ...block.rows.flat()];
			default:
				return block satisfies never;
		}
	});
	const entries = partsOf(item).flatMap((part) => entryListsOf(part).flatMap((list) => list.entries));
	const parts = item.kind === 'set' ? item.parts.reduce((sum, part) => sum + countWords(part), 0) : 0;
	const shown = (item.kind === 'set' ? [] : entries).flatMap(({ content }) =>
		content.kind === 'text' ? [content.text] : content.kind === 'mathematics' ? [content.math] : [],
	);
	return [...texts, ...shown].reduce((sum, text) => sum + wordsIn(text), parts);
}

/** Reading load: words rounded up to fives, so that near counts are alike. */
export function readingLoadOf(item: Item): number {
	return Math.ceil(countWords(item) / 5) * 5;
}

/** Words of a text; mathematics between backticks is one word, however long. */
function wordsIn(text: string): number {
	return text
		.replace(/`[^`]*`/g, ' m ')
		.split(/\s+/)
		.filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}
