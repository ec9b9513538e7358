import type { ErrorPattern } from './pattern.ts';
import { isSignedSum } from './signed-work.ts';

/** a − b becomes b − a: −2 − 6 as 6 − (−2). */
export const subtractionReversed: ErrorPattern = {
	id: 'subtraction-reversed',
	name: 'the subtraction is turned round',
	sentence: 'Consistent with subtracting the first number from the second.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		twoNumbers: (given) =>
			given.operator === 'subtract' && isSignedSum(given)
				? { operator: 'subtract', left: given.right, right: given.left }
				: undefined,
	},
};
