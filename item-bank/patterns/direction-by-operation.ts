import type { ErrorPattern } from './pattern.ts';

/** a + b becomes a + B, and a − b becomes a − B: 2 + (−5) as 2 + 5. */
export const directionByOperation: ErrorPattern = {
	id: 'direction-by-operation',
	name: 'the operation alone sets the direction',
	sentence:
		'Consistent with moving right for every plus and left for every minus, whatever the sign of the second number.',
	source: 'Bishop et al. 2014 (abstract)',
	evidence: 'study',
	slips: {
		twoNumbers: ({ operator, left, right }) =>
			(operator === 'add' || operator === 'subtract') && right < 0 ? { operator, left, right: -right } : undefined,
	},
};
