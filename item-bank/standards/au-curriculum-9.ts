import type { Framework } from './framework.ts';

/** Australian Curriculum, mathematics, edition 9: codes with our own paraphrases, not the official wording. */
export const auCurriculum9: Framework = {
	id: 'au-curriculum',
	edition: '9',
	name: 'Australian Curriculum, mathematics',
	place: 'AU',
	standards: [
		{
			code: 'AC9M7N06',
			isPositiveOnly: true,
			heading: 'Year 7 Number',
			grade: '7',
			statement: 'Four operations with POSITIVE rational numbers.',
			source: 'official text, paraphrased',
		},
		{
			code: 'AC9M7N07',
			heading: 'Year 7 Number',
			grade: '7',
			statement: 'Compare, order, add and subtract integers in problems.',
			source: 'from memory, to be confirmed',
		},
		{
			code: 'AC9M7N09',
			heading: 'Year 7 Number',
			grade: '7',
			statement:
				'Model practical problems; elaborations include positive and negative quantities such as lifts and altitude.',
			source: 'official text, paraphrased',
		},
		{
			code: 'AC9M8N04',
			heading: 'Year 8 Number',
			grade: '8',
			statement: 'Four operations with integers and rational numbers.',
			source: 'from memory, to be confirmed',
		},
	],
};
