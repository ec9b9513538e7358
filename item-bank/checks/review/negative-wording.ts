import { haladyna, type ReviewRule } from '../review-note.ts';
import { wordsOf } from './words.ts';

/** NOT, EXCEPT and their like in what students read: easily overlooked, and rarely needed. */
export const negativeWording: ReviewRule = {
	code: 'review-negative-wording',
	guideline: haladyna(17),
	find: (item) =>
		wordsOf(item).flatMap(({ path, words }) => {
			const found = /\b(not|except|least likely|never)\b/i.exec(words);
			if (!found || path.includes('/options/')) return [];
			return [{ path, message: `expected a question asked positively, found "${found[0]}"` }];
		}),
};
