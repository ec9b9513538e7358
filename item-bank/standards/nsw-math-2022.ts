import type { Framework } from './framework.ts';

/** NSW Mathematics K-10 syllabus, edition 2022: codes with our own paraphrases, not the official wording. */
export const nswMath2022: Framework = {
	id: 'nsw-math',
	edition: '2022',
	name: 'NSW Mathematics K-10 syllabus',
	place: 'AU-NSW',
	note: 'edition year from memory, to be confirmed',
	standards: [
		{
			code: 'MA4-INT-C-01',
			heading: 'Stage 4',
			grade: '7-8',
			statement: 'Compare, order and calculate with integers.',
			source: 'official text, paraphrased',
		},
	],
};
