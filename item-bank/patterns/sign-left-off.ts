import type { ErrorPattern } from './pattern.ts';

/** The right answer without its minus: −6 − 4 as 10. On a grid an unmarked sign means positive. */
export const signLeftOff: ErrorPattern = {
	id: 'sign-left-off',
	name: 'the sign is left off the grid',
	sentence: 'Consistent with a right answer whose minus was not marked on the answer grid.',
	source: 'gridding directions in Texas: an answer without a marked sign counts as positive',
	evidence: 'practice',
	slips: {
		gridEntry: Math.abs,
	},
};
