import type { ErrorPattern } from './pattern.ts';
import { isSignedSum } from './signed-work.ts';

/** The smaller size from the larger, without a sign: 3 − 9 as 9 − 3. */
export const largerMinusSmaller: ErrorPattern = {
	id: 'larger-minus-smaller',
	name: 'the smaller size is taken from the larger, without a sign',
	sentence: 'Consistent with taking the smaller size from the larger and giving no sign.',
	source: 'Aqazade and Bofferding 2021',
	evidence: 'study',
	slips: {
		twoNumbers: (given) => (isSignedSum(given) ? Math.abs(Math.abs(given.left) - Math.abs(given.right)) : undefined),
	},
};
