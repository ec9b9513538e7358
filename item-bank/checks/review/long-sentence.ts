import { haladyna, type ReviewRule } from '../review-note.ts';
import { countWords, sentencesOf, wordsOf } from './words.ts';

/** Words a sentence may have before it is hard for grade 6 (our choice; per-sentence length catches more than formulas in short texts). */
export const mostWords = 22;

/** Sentences that test reading; mathematics counts as one word. */
export const longSentence: ReviewRule = {
	code: 'review-long-sentence',
	guideline: haladyna(13),
	find: (item) =>
		wordsOf(item).flatMap(({ path, words }) =>
			sentencesOf(words).flatMap((sentence) => {
				const count = countWords(sentence);
				if (count <= mostWords) return [];
				return [
					{
						path,
						message: `expected sentences of at most ${mostWords} words, found ${count}: "${sentence.slice(0, 40)}…"`,
					},
				];
			}),
		),
};
