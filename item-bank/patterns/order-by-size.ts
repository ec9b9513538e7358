import type { ErrorPattern } from './pattern.ts';

/** x > y wherever |x| > |y|: −8 > −7. Numbers of equal size decide nothing. */
export const orderBySize: ErrorPattern = {
	id: 'order-by-size',
	name: 'numbers are ordered by size',
	sentence: 'Consistent with ordering numbers by their distance from zero and ignoring their signs.',
	source: 'Bofferding 2014',
	evidence: 'study',
	slips: {
		ordering: (numbers) => {
			const sizes = new Set(numbers.map(Math.abs));
			return sizes.size < numbers.length ? undefined : [...numbers].sort((a, b) => Math.abs(a) - Math.abs(b));
		},
	},
};
