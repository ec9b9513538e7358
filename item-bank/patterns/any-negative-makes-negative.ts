import type { ErrorPattern } from './pattern.ts';
import { isSignedProduct, workSizes } from './signed-work.ts';

/** A product or quotient with a negative number is negative: −3 × (−5) as −15. */
export const anyNegativeMakesNegative: ErrorPattern = {
	id: 'any-negative-makes-negative',
	name: 'any negative number makes the result negative',
	sentence: 'Consistent with giving a product or quotient a minus as soon as one of the numbers is negative.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		twoNumbers: (given) => {
			const size = workSizes(given);
			return isSignedProduct(given) && size !== undefined ? -size : undefined;
		},
	},
};
