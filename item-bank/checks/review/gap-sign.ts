import { haladyna, type Rule } from '../rule.ts';
import { doubledInSymbols } from '../stops/doubled-sign.ts';

/** A choice that doubles signs once it stands in the gap, as −8 does in 5 + _: parentheses belong around it, or around what follows. */
export const gapSign: Rule = {
	severity: 'advise',
	guideline: haladyna(12),
	find: ({ parts }) =>
		parts.flatMap(({ part, path }) => {
			if (part.kind !== 'inline-choice' || doubledInSymbols.test(part.statement)) return [];
			const filled = part.choices
				.filter(({ math }) => !doubledInSymbols.test(math))
				.map(({ math }) => part.statement.replace('_', math))
				.find((statement) => doubledInSymbols.test(statement));
			if (filled === undefined) return [];
			const message = `expected parentheses around a negative number after a sign, found "${filled}" once the gap is filled`;
			return [{ code: 'review-gap-sign', path: `${path}/statement`, message }];
		}),
};
