import { haladyna, type Rule } from '../rule.ts';

/** Three good options suffice; more than five make reading, not mathematics. */
export const optionCount: Rule = {
	severity: 'advise',
	guideline: haladyna(18),
	find: ({ parts }) =>
		parts.flatMap(({ part, path }) => {
			if (part.kind !== 'choice' || part.options.length <= 5) return [];
			const message = `expected at most 5 options, found ${part.options.length}; three good ones suffice`;
			return [{ code: 'review-option-count', path: `${path}/options`, message }];
		}),
};
