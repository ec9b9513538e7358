import type { ErrorPattern } from './pattern.ts';
import { isSignedSum } from './signed-work.ts';

/** The sizes are added, like signs make it positive, unlike signs negative: −4 + (−6) as 10. */
export const productRuleInSum: ErrorPattern = {
	id: 'product-rule-in-sum',
	name: 'the sign rule of products is used in a sum',
	sentence: 'Consistent with adding the sizes and taking the sign that a product of the two numbers would have.',
	source: 'Makonye and Hantibi 2014 (abstract)',
	evidence: 'study',
	slips: {
		twoNumbers: (given) => {
			if (given.operator !== 'add' || !isSignedSum(given) || given.left === 0 || given.right === 0) return undefined;
			return Math.sign(given.left) * Math.sign(given.right) * (Math.abs(given.left) + Math.abs(given.right));
		},
	},
};
