import { haladyna, type Rule } from '../rule.ts';

/** All options are mathematics, all are text, or all are figures. */
export const oneKindOfOption: Rule = {
	severity: 'stop',
	guideline: haladyna(23),
	find: ({ parts }) =>
		parts.flatMap(({ lists }) =>
			lists.flatMap(({ path, entries }) => {
				const [first] = entries;
				if (entries.every(({ option }) => option.content.kind === first?.option.content.kind)) return [];
				const kinds = new Set(entries.map(({ option }) => option.content.kind));
				const message = `expected options of one kind, found ${[...kinds].join(' and ')}`;
				return [{ code: 'option-kinds-mixed', path, message }];
			}),
		),
};
