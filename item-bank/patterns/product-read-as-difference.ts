import type { ErrorPattern } from './pattern.ts';

/** a(−B) becomes a − B: 5(−3) as 5 − 3. */
export const productReadAsDifference: ErrorPattern = {
	id: 'product-read-as-difference',
	name: 'a product is read as a difference',
	sentence: 'Consistent with reading the minus of the second factor as subtraction.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		twoNumbers: ({ operator, left, right }) =>
			operator === 'multiply' && right < 0 ? { operator: 'subtract', left, right: -right } : undefined,
	},
};
