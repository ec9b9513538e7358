import { haladyna, type ReviewRule } from '../review-note.ts';
import { wordsOf } from './words.ts';

/** A number with a hyphen outside backticks prints with a hyphen and is read as a dash. */
export const hyphenAsMinus: ReviewRule = {
	code: 'review-hyphen-as-minus',
	guideline: haladyna(12),
	find: (item) =>
		wordsOf(item).flatMap(({ path, words }) => {
			const found = /(?:^|[\s(])[-–]\d+/.exec(words);
			if (!found) return [];
			return [
				{
					path,
					message: `expected a negative number between backticks, so that it prints with a true minus, found "${found[0].trim()}"`,
				},
			];
		}),
};
