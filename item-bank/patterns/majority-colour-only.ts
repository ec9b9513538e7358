import type { ErrorPattern } from './pattern.ts';

/** Only the larger group counts: 3 plus and 5 minus counters as −5. */
export const majorityColourOnly: ErrorPattern = {
	id: 'majority-colour-only',
	name: 'only the counters in the majority count',
	sentence: 'Consistent with counting only the counters of the larger group, without making zero pairs.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		counterSet: ({ plus, minus }) => {
			if (plus === minus) return undefined;
			return plus > minus ? plus : -minus;
		},
	},
};
