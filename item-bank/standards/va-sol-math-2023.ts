import type { Framework } from './framework.ts';

/** Virginia Standards of Learning, mathematics, edition 2023: codes with our own paraphrases, not the official wording. */
export const vaSolMath2023: Framework = {
	id: 'va-sol-math',
	edition: '2023',
	name: 'Virginia Standards of Learning, mathematics',
	place: 'US-VA',
	standards: [
		{
			code: '6.CE.2',
			heading: 'Grade 6 Computation and Estimation',
			grade: '6',
			statement: 'Estimate, show, solve and justify with integer operations.',
			source: 'official text, paraphrased; label or part of it from memory',
		},
		{
			code: '6.CE.2.a',
			parent: '6.CE.2',
			grade: '6',
			statement: 'Model the four operations on integers with pictures or objects.',
			source: 'official text, paraphrased',
		},
		{
			code: '6.CE.2.b',
			parent: '6.CE.2',
			grade: '6',
			statement: 'Four operations on two integers.',
			source: 'official text, paraphrased',
		},
		{
			code: '6.CE.2.c',
			parent: '6.CE.2',
			grade: '6',
			statement:
				'Simplify an expression with absolute-value bars and one operation on two integers; show the result on a number line.',
			source: 'official text, paraphrased',
		},
		{
			code: '6.CE.2.d',
			parent: '6.CE.2',
			grade: '6',
			statement: 'Estimate, find and justify answers to one- and two-step integer problems in context.',
			source: 'official text, paraphrased',
		},
	],
};
