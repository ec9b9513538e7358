import { optionEntries } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** One option ten times as large as every other stands out as key or as filler. */
export const oddSize: Rule = {
	severity: 'advise',
	guideline: haladyna(28),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const entries = optionEntries(facts);
			const sizes = entries.flatMap(({ number }) => (number === undefined ? [] : [Math.abs(number)]));
			if (sizes.length < 3 || sizes.length < entries.length) return [];
			const [largest = 0, next = 0] = [...sizes].sort((a, b) => b - a);
			const odd = entries[sizes.indexOf(largest)];
			if (next === 0 || largest < next * 10 || odd === undefined) return [];
			const message = `expected sizes of one kind, found ${odd.number} beside numbers up to ${next}`;
			return [{ code: 'review-odd-size', path: odd.path, message }];
		}),
};
