import type { ErrorPattern } from './pattern.ts';

/** Works with the sizes alone: −9 + 2 as 9 + 2; on a number line every number lies on the positive side. */
export const signsDropped: ErrorPattern = {
	id: 'signs-dropped',
	name: 'every sign is dropped',
	sentence: 'Consistent with dropping every negative sign and working with the sizes alone.',
	source: 'Aqazade and Bofferding 2021',
	evidence: 'study',
	slips: {
		twoNumbers: ({ operator, left, right }) =>
			left < 0 || right < 0 ? { operator, left: Math.abs(left), right: Math.abs(right) } : undefined,
		oppositeNumber: Math.abs,
		walk: ({ start, moves }) => moves.reduce((at, move) => at + Math.abs(move), Math.abs(start)),
	},
};
