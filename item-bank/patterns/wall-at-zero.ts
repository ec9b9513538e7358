import type { ErrorPattern } from './pattern.ts';

/** a − b of positive numbers stops at 0 where a is the smaller: 3 − 5 as 0. */
export const wallAtZero: ErrorPattern = {
	id: 'wall-at-zero',
	name: 'taking away stops at zero',
	sentence: 'Consistent with taking away only down to zero, as if nothing lay below it.',
	source: 'Bofferding 2014',
	evidence: 'study',
	slips: {
		twoNumbers: ({ operator, left, right }) => (operator === 'subtract' && left > 0 && left < right ? 0 : undefined),
	},
};
