import type { Framework } from './framework.ts';

/** Virginia Standards of Learning, mathematics, edition 2016: codes with our own paraphrases, not the official wording. */
export const vaSolMath2016: Framework = {
	id: 'va-sol-math',
	edition: '2016',
	name: 'Virginia Standards of Learning, mathematics',
	place: 'US-VA',
	standards: [
		{
			code: '6.6',
			heading: 'Grade 6 Computation and Estimation',
			grade: '6',
			statement: 'Integer operations, practical problems and numerical expressions.',
			source: 'from memory, to be confirmed',
		},
	],
};
