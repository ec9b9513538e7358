import { haladyna, type Rule } from '../rule.ts';
import { isOptionText, sentencesOf } from '../words.ts';

const capitals = /\b(NOT|EXCEPT|NEVER|LEAST)\b/;
const lowercase = /\b(not|except|never|least likely)\b|\b(?:is|are|do|does|can|was|did)(n['’]t)\b/;
/** A sentence that asks or instructs; others may say what is not so. */
const asks = /\?$|^(?:choose|select|mark|find|name|give|which)\b/i;

/**
 * A question asked negatively is easily misread. A person has to judge it: "does not" may also belong to the story, and
 * a NOT in capitals is the way out that the guideline leaves.
 */
export const negativeWording: Rule = {
	severity: 'advise',
	guideline: haladyna(17),
	find: ({ words }) =>
		words.flatMap((text) => {
			if (isOptionText(text)) return [];
			return sentencesOf(text.words).flatMap((sentence) => {
				if (!asks.test(sentence)) return [];
				const loud = capitals.exec(sentence)?.[1];
				const quiet = lowercase.exec(sentence)?.[0];
				if (loud === undefined && quiet === undefined) return [];
				const message =
					loud === undefined
						? `expected a question asked positively, or its "${quiet}" in capitals, found "${quiet}"`
						: `expected a question asked positively where it can be, found "${loud}"`;
				return [{ code: 'review-negative-wording', path: text.path, message }];
			});
		}),
};
