import type { StemBlock } from '../../types.ts';
import { findLoneKey, type ReadEntry } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** A word of the stem that only the right option repeats gives it away. */
export const stemEcho: Rule = {
	severity: 'advise',
	guideline: haladyna(28),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const lone = findLoneKey(facts);
			if (lone === undefined || lone.key.option.content.kind !== 'text') return [];
			const asked = new Set(facts.part.stem.flatMap(wordsOfBlock));
			const elsewhere = new Set(lone.others.flatMap(wordsOfEntry));
			const echo = wordsOfEntry(lone.key).find((word) => asked.has(word) && !elsewhere.has(word));
			if (echo === undefined) return [];
			const message = `expected the words of the stem in several options or in none, found "${echo}" in the right one only`;
			return [{ code: 'review-stem-echo', path: lone.key.path, message }];
		}),
};

function wordsOfBlock(block: StemBlock): readonly string[] {
	return block.kind === 'paragraph' ? wordsOfText(block.text) : [];
}

function wordsOfEntry({ option: { content } }: ReadEntry): readonly string[] {
	return content.kind === 'text' ? wordsOfText(content.text) : [];
}

/** Words of five letters or more, which carry meaning, without the s of a plural. */
function wordsOfText(text: string): readonly string[] {
	const words =
		text
			.replace(/`[^`]*`/g, ' ')
			.toLowerCase()
			.match(/\p{L}{5,}/gu) ?? [];
	return words.map((word) => word.replace(/s$/, ''));
}
