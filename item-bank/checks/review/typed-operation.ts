import { haladyna, type Rule } from '../rule.ts';

/** Two numbers with a sign of operation between them. */
const operation = /\d\s+[-–−+*×x/÷]\s+\(?[-−]?\d[^\s,;.?!]*|\d\s*[+×÷*]\s*\(?[-−]?\d[^\s,;.?!]*/;

/** Mathematics outside backticks is set, spoken and checked as words. */
export const typedOperation: Rule = {
	severity: 'advise',
	guideline: haladyna(12),
	find: ({ words }) =>
		words.flatMap((text) => {
			const found = operation.exec(text.words)?.[0];
			if (found === undefined) return [];
			const message = `expected mathematics between backticks, so that it is printed and spoken as mathematics, found "${found}"`;
			return [{ code: 'review-typed-operation', path: text.path, message }];
		}),
};
