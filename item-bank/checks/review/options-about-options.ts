import type { PartItem } from '../../types.ts';
import { optionEntries } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** "A and C only", "both A and B", "options B and D". */
const letters =
	/^(?:both |only |options? |answers? |choices? )*([A-H])(?:, [A-H])*,? (?:and|or) ([A-H])(?: only| are (?:right|true|correct))?\.?$/;
const both = /^(?:both|either) of (?:these|them|the above)\b(?! \p{L})/iu;

/** Options about other options test reading in a puzzle; letters that name points or rows of the item are no such thing. */
export const optionsAboutOptions: Rule = {
	severity: 'advise',
	guideline: haladyna(9),
	find: ({ parts }) =>
		parts.flatMap((facts) =>
			optionEntries(facts).flatMap(({ option: { content }, path }) => {
				if (content.kind !== 'text') return [];
				const named = letters.exec(content.text);
				const isAbout = named ? !namesLetters(facts.part, [named[1], named[2]]) : both.test(content.text);
				if (!isAbout) return [];
				const message = `expected an option that stands by itself, found "${content.text}"`;
				return [{ code: 'review-options-about-options', path: `${path}/content/text`, message }];
			}),
		),
};

/** Whether a stem uses letters as names of its own, in words, tables or figures. */
function namesLetters({ stem }: PartItem, names: readonly (string | undefined)[]): boolean {
	const told = JSON.stringify(stem);
	return names.every((name) => name !== undefined && new RegExp(`\\b${name}\\b`).test(told));
}
