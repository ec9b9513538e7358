import { haladyna, type Rule } from '../rule.ts';
import { isOptionText } from '../words.ts';

/** "All of the above": who sees two right options knows the answer, who sees one wrong option knows as well. */
export const allOfTheAbove: Rule = {
	severity: 'advise',
	guideline: haladyna(26),
	find: ({ words }) =>
		words.flatMap((text) => {
			const found =
				isOptionText(text) && /\ball (?:of )?(?:the above|the others?|these)\b(?! \p{L})/iu.exec(text.words);
			if (!found) return [];
			const message = `expected an option that stands by itself, found "${found[0]}"`;
			return [{ code: 'review-all-of-the-above', path: text.path, message }];
		}),
};
