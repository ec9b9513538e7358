import { haladyna, type Rule } from '../rule.ts';
import { isOptionText } from '../words.ts';

/** "None of the above" as a key rewards students who only know what is wrong. */
export const noneOfTheAbove: Rule = {
	severity: 'advise',
	guideline: haladyna(25),
	find: ({ words }) =>
		words.flatMap((text) => {
			const found =
				isOptionText(text) &&
				/\b(?:none|neither) of (?:the above|the others?|these|them)\b(?! \p{L})/iu.exec(text.words);
			if (!found) return [];
			const message = `expected "${found[0]}" only where it is worth it, and as the key now and then`;
			return [{ code: 'review-none-of-the-above', path: text.path, message }];
		}),
};
