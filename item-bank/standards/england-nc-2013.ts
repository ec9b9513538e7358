import type { Framework } from './framework.ts';

/** National curriculum in England, mathematics key stage 3, edition 2013: codes with our own paraphrases, not the official wording. */
export const englandNc2013: Framework = {
	id: 'england-nc',
	edition: '2013',
	name: 'National curriculum in England, mathematics key stage 3',
	place: 'GB-ENG',
	note: 'edition year from memory, to be confirmed',
	standards: [
		{
			code: 'KS3.Number',
			isOwnCode: true,
			heading: 'Mathematics KS3, Number',
			grade: 'Years 7-9',
			statement: 'Order positive and negative integers and use the four operations with them.',
			source: 'official text, paraphrased; label or part of it from memory',
		},
	],
};
