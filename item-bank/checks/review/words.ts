import { textsOf } from '../../items/texts.ts';
import type { Item } from '../../types.ts';

/** What students read of an item in words, with mathematics between backticks replaced by one mark. */
export interface WordedText {
	readonly path: string;
	readonly words: string;
}

/** The rich and plain texts students read, mathematics taken out; statements and choices in symbols are left out. */
export function wordsOf(item: Item): readonly WordedText[] {
	return textsOf(item)
		.filter(
			({ kind, seenBy, path }) => seenBy === 'students' && kind !== 'mathematics' && !/\/(statement|math)$/.test(path),
		)
		.map(({ path, text }) => ({ path, words: text.replace(/`[^`]*`/g, '□') }));
}

/** Sentences of a text; a full stop inside a number or an abbreviation such as "a.m." ends none. */
export function sentencesOf(words: string): readonly string[] {
	return words
		.replace(/\b([ap])\.m\.(?=\s+\p{Lu})/gu, '$1m.')
		.replace(/\b([ap])\.m\./g, '$1m')
		.split(/(?<=[.?!])\s+/)
		.map((sentence) => sentence.trim())
		.filter((sentence) => sentence !== '');
}

/** How many words a sentence has; a piece of mathematics counts as one. */
export function countWords(sentence: string): number {
	return sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}□]/u.test(word)).length;
}
