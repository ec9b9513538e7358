import type { ErrorPattern } from './pattern.ts';
import { isSignedSum } from './signed-work.ts';

/** a + b becomes −(A + B): −9 + 2 as −(9 + 2). */
export const sizesAddedMinusPut: ErrorPattern = {
	id: 'sizes-added-minus-put',
	name: 'sizes are added and a minus is put in front',
	sentence: 'Consistent with adding the sizes and putting a minus in front, whatever the signs.',
	source: 'Aqazade and Bofferding 2021',
	evidence: 'study',
	slips: {
		twoNumbers: (given) =>
			given.operator === 'add' && isSignedSum(given) ? -(Math.abs(given.left) + Math.abs(given.right)) : undefined,
	},
};
