import { sentencesOf } from './words.ts';

/** Below this many words the formula says next to nothing (trade practice, no source). */
export const fewestWords = 100;

/**
 * Reading grade by the Flesch-Kincaid formula: 0.39 · words per sentence + 11.8 · syllables per word − 15.59. Pieces of
 * mathematics and numerals are left out; table cells and other texts without a full stop count as sentences. Undefined for
 * fewer than 100 words. Syllables are estimated, so it is advice only.
 */
export function measureReading(texts: readonly string[]): number | undefined {
	// A word and what follows it take two characters at least.
	if (texts.reduce((sum, text) => sum + text.length + 1, 0) < fewestWords * 2) return undefined;
	const sentences = texts
		.flatMap(sentencesOf)
		.map((sentence) => sentence.match(/\p{L}+(?:['’]\p{L}+)?/gu) ?? [])
		.filter((words) => words.length > 0);
	const words = sentences.flat();
	if (words.length < fewestWords) return undefined;
	const syllables = words.reduce((sum, word) => sum + countSyllables(word), 0);
	return 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59;
}

/** Syllables of an English word, estimated: groups of vowels, without a silent e at the end (also of -ed and -es). */
export function countSyllables(word: string): number {
	const lower = word.toLowerCase();
	const silent = /(?:[^aeiouyl]e|[^aeioutdy]ed|[^aeiouyscxzgh]es|(?:[aeiouy]l)e)$/.test(lower);
	const heard = silent ? lower.replace(/e[sd]?$/, '') : lower;
	return Math.max(1, heard.match(/[aeiouy]+/g)?.length ?? 0);
}
