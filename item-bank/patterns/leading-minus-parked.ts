import type { ErrorPattern } from './pattern.ts';

/** (−A) ± b becomes −(A ± b): −5 + 3 as −(5 + 3). */
export const leadingMinusParked: ErrorPattern = {
	id: 'leading-minus-parked',
	name: 'the leading minus is parked and put back',
	sentence:
		'Consistent with setting the leading minus aside, working with the rest, and putting the minus back in front.',
	source: 'Vlassis 2004; Fagnant et al. 2005; Schwarz et al. 1993; all in Bofferding 2010',
	evidence: 'study',
	slips: {
		twoNumbers: ({ operator, left, right }) => {
			if (left >= 0 || (operator !== 'add' && operator !== 'subtract')) return undefined;
			return operator === 'add' ? -(-left + right) : -(-left - right);
		},
	},
};
