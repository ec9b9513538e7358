import { haladyna, type Rule } from '../rule.ts';
import { countWords, sentencesOf } from '../words.ts';

/** Words a sentence may have before it is hard for grade 6 (our choice; per-sentence length catches more than formulas in short texts). */
export const mostWords = 22;

/** Sentences that test reading; mathematics counts as one word. */
export const longSentence: Rule = {
	severity: 'advise',
	guideline: haladyna(13),
	find: ({ words }) =>
		words.flatMap(({ path, words: text }) => {
			// The shortest word and its blank take two characters.
			if (text.length <= mostWords * 2) return [];
			return sentencesOf(text).flatMap((sentence) => {
				const count = countWords(sentence);
				if (count <= mostWords) return [];
				const message = `expected sentences of at most ${mostWords} words, found ${count}: "${sentence.slice(0, 40)}…"`;
				return [{ code: 'review-long-sentence', path, message }];
			});
		}),
};
