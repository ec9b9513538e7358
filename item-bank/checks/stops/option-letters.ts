import type { Problem } from '../../problem.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** Options, entries and choices are named a, b, c … as they stand. */
export const optionLetters: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ parts }) =>
		parts.flatMap(({ part, path, lists }) =>
			part.kind === 'inline-choice'
				? checkLetters(part.choices, `${path}/choices`)
				: lists.flatMap((list) =>
						checkLetters(
							list.entries.map(({ option }) => option),
							list.path,
						),
					),
		),
};

function checkLetters(entries: readonly { readonly id: string }[], path: string): readonly Problem[] {
	return entries.flatMap(({ id }, index) => {
		const expected = String.fromCharCode(97 + index);
		if (id === expected) return [];
		const message = `expected option id "${expected}" at place ${index + 1}, found "${id}"`;
		return [{ code: 'option-id-order', path: `${path}/${index}/id`, message }];
	});
}
