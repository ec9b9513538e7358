import type { ErrorPattern } from './pattern.ts';
import { isSignedSum } from './signed-work.ts';

/** The smaller size from the larger, with the sign of the first number: 3 + (−8) as 5. */
export const sizesSubtractedFirstSignKept: ErrorPattern = {
	id: 'sizes-subtracted-first-sign-kept',
	name: 'sizes are subtracted and the first sign is kept',
	sentence: 'Consistent with subtracting the smaller size from the larger and keeping the sign of the first number.',
	source: 'Tatsuoka and Baillie, in Bofferding 2010',
	evidence: 'study',
	slips: {
		twoNumbers: (given) => {
			if (!isSignedSum(given) || given.left === 0) return undefined;
			return Math.sign(given.left) * Math.abs(Math.abs(given.left) - Math.abs(given.right));
		},
	},
};
