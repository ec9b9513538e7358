import { haladyna, type Rule } from '../rule.ts';

/** There is one right answer, it can be computed, and a key that was typed is the one computed. */
export const computedKey: Rule = {
	severity: 'stop',
	guideline: haladyna(19),
	find: ({ parts }) =>
		parts.flatMap(({ key, path }) =>
			'problems' in key ? key.problems.map((problem) => ({ ...problem, path: path + problem.path })) : [],
		),
};
