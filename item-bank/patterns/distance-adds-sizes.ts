import type { ErrorPattern } from './pattern.ts';

/** The distance |a − b| becomes A + B: from −3 to −8 as 11. */
export const distanceAddsSizes: ErrorPattern = {
	id: 'distance-adds-sizes',
	name: 'the distance is the sum of the sizes',
	sentence: 'Consistent with adding the two distances from zero even when both points lie on one side.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		distance: (from, to) => Math.abs(from) + Math.abs(to),
	},
};
