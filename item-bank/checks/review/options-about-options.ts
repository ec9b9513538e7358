import { haladyna, type ReviewRule } from '../review-note.ts';
import { wordsOf } from './words.ts';

/** "All of the above", "none of these", "A and C only": options about other options. */
export const optionsAboutOptions: ReviewRule = {
	code: 'review-options-about-options',
	guideline: haladyna(26),
	find: (item) =>
		wordsOf(item).flatMap(({ path, words }) => {
			const found = /\b(all|none|both) of (the above|these|them)\b|\b(both )?[A-H] and [A-H]( only)?\b/.exec(words);
			if (!found || !path.includes('/options/')) return [];
			return [{ path, message: `expected an option that stands by itself, found "${found[0]}"` }];
		}),
};
