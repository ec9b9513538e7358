import type { ErrorPattern } from './pattern.ts';
import { isSignedSum } from './signed-work.ts';

/** a − b becomes (−a) + (−b): 7 − (−2) as −7 + 2. */
export const bothNumbersFlipped: ErrorPattern = {
	id: 'both-numbers-flipped',
	name: 'the first number is flipped too',
	sentence: 'Consistent with changing subtraction to addition and changing the signs of both numbers.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		twoNumbers: (given) =>
			given.operator === 'subtract' && isSignedSum(given)
				? { operator: 'add', left: -given.left, right: -given.right }
				: undefined,
	},
};
