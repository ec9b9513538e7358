import type { ErrorPattern } from './pattern.ts';

/** Plus and minus counters are counted together: 3 plus and 5 minus counters as 8. */
export const allCountersCounted: ErrorPattern = {
	id: 'all-counters-counted',
	name: 'all counters are counted alike',
	sentence: 'Consistent with counting every counter as one, without making zero pairs.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		counterSet: ({ plus, minus }) => plus + minus,
	},
};
