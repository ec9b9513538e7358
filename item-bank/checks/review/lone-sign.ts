import { findLoneKey } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** A key that is the only negative, or the only positive, number among the options can be guessed. */
export const loneSign: Rule = {
	severity: 'advise',
	guideline: haladyna(28),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const lone = findLoneKey(facts);
			const sign = Math.sign(lone?.key.number ?? 0);
			if (lone === undefined || sign === 0) return [];
			if (lone.others.some(({ number }) => number === undefined || Math.sign(number) === sign)) return [];
			const word = sign < 0 ? 'negative' : 'positive';
			const message = `expected another ${word} option beside the key, found none`;
			return [{ code: 'review-lone-sign', path: lone.key.path, message }];
		}),
};
