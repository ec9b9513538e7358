import type { ErrorPattern } from './pattern.ts';

/** |x| becomes −x: |7| as −7. */
export const absoluteValueAsOpposite: ErrorPattern = {
	id: 'absolute-value-as-opposite',
	name: 'the absolute value is read as the opposite',
	sentence: 'Consistent with reading the bars of an absolute value as a change of sign.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		absoluteValue: (of) => -of,
	},
};
