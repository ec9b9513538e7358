import { optionEntries } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** Options that are plain numbers stand in increasing order. */
export const numberOrder: Rule = {
	severity: 'stop',
	guideline: haladyna(21),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const entries = optionEntries(facts);
			if (entries.some(({ number }) => number === undefined)) return [];
			return entries.flatMap(({ number, path }, index) => {
				const before = entries[index - 1]?.number;
				if (number === undefined || before === undefined || before < number) return [];
				const message = `expected numbers in increasing order, found ${number} after ${before}`;
				return [{ code: 'option-number-order', path, message }];
			});
		}),
};
