import type { ErrorPattern } from './pattern.ts';

/** a − (−B) becomes a − B: 8 − (−4) as 8 − 4. */
export const secondMinusLost: ErrorPattern = {
	id: 'second-minus-lost',
	name: 'the second of two minuses is lost',
	sentence: 'Consistent with reading a minus followed by a negative sign as one single minus.',
	source: 'Murray 1985, in Bofferding 2010',
	evidence: 'study',
	slips: {
		twoNumbers: ({ operator, left, right }) =>
			operator === 'subtract' && right < 0 ? { operator, left, right: -right } : undefined,
		oppositeNumber: (of) => (of < 0 ? of : undefined),
	},
};
