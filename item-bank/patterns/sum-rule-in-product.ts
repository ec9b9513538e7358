import type { ErrorPattern } from './pattern.ts';
import { isSignedProduct, workSizes } from './signed-work.ts';

/** A product or quotient takes the sign a sum would have: −3 × (−5) as −15. Unlike signs of equal size decide nothing. */
export const sumRuleInProduct: ErrorPattern = {
	id: 'sum-rule-in-product',
	name: 'the sign rule of sums is used in a product',
	sentence: 'Consistent with keeping a common sign, or else the sign of the number of larger size, as in a sum.',
	source: 'Makonye and Hantibi 2014 (abstract); in detail common practice, no source',
	evidence: 'study',
	slips: {
		twoNumbers: (given) => {
			const size = workSizes(given);
			if (!isSignedProduct(given) || size === undefined) return undefined;
			const [leftSize, rightSize] = [Math.abs(given.left), Math.abs(given.right)];
			if (given.left < 0 === given.right < 0) return -size;
			if (leftSize === rightSize) return undefined;
			return Math.sign(leftSize > rightSize ? given.left : given.right) * size;
		},
	},
};
