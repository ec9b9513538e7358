import type { Framework } from './framework.ts';

/** Virginia Standards of Learning, mathematics, edition 2009: codes with our own paraphrases, not the official wording. */
export const vaSolMath2009: Framework = {
	id: 'va-sol-math',
	edition: '2009',
	name: 'Virginia Standards of Learning, mathematics',
	place: 'US-VA',
	standards: [
		{
			code: '6.6',
			heading: 'Grade 6 Computation and Estimation',
			grade: '6',
			statement:
				'Multiply and divide fractions and mixed numbers: NOT integers. Kept to show that the code was reused.',
			source: 'official text, paraphrased',
		},
	],
};
