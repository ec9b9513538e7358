import type { ItemText } from '../items/texts.ts';

/** What students read of an item in words, with mathematics between backticks replaced by one mark. */
export interface WordedText {
	readonly path: string;
	readonly words: string;
}

/** The rich and plain texts students read, mathematics taken out; statements and choices in symbols are left out. */
export function wordsIn(texts: readonly ItemText[]): readonly WordedText[] {
	const worded: WordedText[] = [];
	for (const { path, kind, text, seenBy } of texts) {
		if (seenBy !== 'students' || kind === 'mathematics' || isSymbolic(path)) continue;
		worded.push({ path, words: text.includes('`') ? text.replace(/`[^`]*`/g, '□') : text });
	}
	return worded;
}

/** Statements with a gap and what goes into it are plain texts, but mathematics. */
function isSymbolic(path: string): boolean {
	return path.endsWith('/statement') || path.endsWith('/math');
}

/** Whether a text is what an option or entry says. */
export function isOptionText({ path }: WordedText): boolean {
	return path.endsWith('/content/text');
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
