import { haladyna, type Rule } from '../rule.ts';

/** A hyphen or en dash before a number, after a blank or an opening bracket; clock times before it make a range. */
const hyphenated = /(?:^|[\s("“=<>])[-–]\d+/;
const afterTime = /(?:\d|[ap]\.?m\.?)\s+$/i;

/** A number with a hyphen outside backticks prints with a hyphen and is read out as a dash, or not at all. */
export const hyphenAsMinus: Rule = {
	severity: 'stop',
	guideline: haladyna(12),
	find: ({ words }) =>
		words.flatMap((text) => {
			const found = hyphenated.exec(text.words);
			if (!found || afterTime.test(text.words.slice(0, found.index + 1))) return [];
			const number = found[0].trim().replace(/^[("“=<>]/, '');
			const message = `expected a negative number between backticks, so that it prints with a true minus, found "${number}"`;
			return [{ code: 'hyphen-as-minus', path: text.path, message }];
		}),
};
