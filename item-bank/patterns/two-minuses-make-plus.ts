import type { ErrorPattern } from './pattern.ts';

/** With two minuses or more in a sum or difference the sizes are added: −3 − 5 as 3 + 5. */
export const twoMinusesMakePlus: ErrorPattern = {
	id: 'two-minuses-make-plus',
	name: 'two minuses anywhere make a plus',
	sentence: 'Consistent with taking any two minus signs in a sum or difference together as a plus.',
	source: 'Bofferding 2010',
	evidence: 'study',
	slips: {
		twoNumbers: ({ operator, left, right }) => {
			if (operator !== 'add' && operator !== 'subtract') return undefined;
			const minuses = [left < 0, operator === 'subtract', right < 0].filter(Boolean).length;
			return minuses >= 2 ? { operator: 'add', left: Math.abs(left), right: Math.abs(right) } : undefined;
		},
	},
};
