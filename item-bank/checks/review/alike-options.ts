import { listNodes } from '../../expression/count.ts';
import { optionEntries, type PartFacts, type ReadEntry } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** Options alike in what they are: numbers, expressions or statements, and numbers with or without a unit. */
export const alikeOptions: Rule = {
	severity: 'advise',
	guideline: haladyna(23),
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const sorts = new Set(optionEntries(facts).flatMap((entry) => sortOf(entry) ?? []));
			if (sorts.size < 2 || isAboutValues(facts)) return [];
			const message = `expected options of one sort, found ${[...sorts].join(' and ')}`;
			return [{ code: 'review-options-unlike', path: `${facts.path}/options`, message }];
		}),
};

/** "Choose all that have the value": numbers and expressions may stand side by side there. */
function isAboutValues({ part }: PartFacts): boolean {
	return part.kind === 'multiple-choice' && part.rule.kind === 'same-value';
}

function sortOf({ mathematics, number, option: { content } }: ReadEntry): string | undefined {
	if (number !== undefined) return 'numbers';
	if (mathematics?.kind === 'statement') return 'statements';
	if (mathematics !== undefined) {
		const isWorked = listNodes(mathematics).some(({ kind }) => kind === 'operation' || kind === 'absolute');
		return isWorked ? 'expressions' : 'numbers';
	}
	if (content.kind !== 'text') return undefined;
	const bare = content.text.replace(/`[^`]*`/g, ' ').replace(/[\d\s.,−-]/g, '');
	const isNumberFirst = /^\s*(?:`\s*[-−]?\d+\s*`|[-−]?\d+)/.test(content.text);
	if (!isNumberFirst) return undefined;
	return bare === '' ? 'numbers without a unit' : 'numbers with a unit';
}
