import { describeFigure } from '../../figures/describe-figure.ts';
import { sayNumber } from '../../figures/describe-number-line.ts';
import type { Figure, PartItem } from '../../types.ts';
import { optionEntries, type PartFacts } from '../facts.ts';
import type { Rule } from '../rule.ts';

/**
 * A description that speaks the very number asked for, as the place of a point or the end of an arrow: those who hear it
 * need not read the line. Numbers on the scale and counts of counters are there for everybody.
 */
export const tellingDescription: Rule = {
	severity: 'advise',
	guideline: { source: 'WCAG 2.2, 1.1.1: where text would spoil a test, it identifies only' },
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const figures = numberLinesOf(facts.part);
			const value = figures.length === 0 ? undefined : findAnswer(facts);
			if (value === undefined) return [];
			return figures.flatMap(({ figure, path }) => {
				const spoken = sayNumber(value);
				const found = new RegExp(`(?:ends|is) at ${spoken}\\.`).exec(describeFigure(figure));
				if (!found) return [];
				const message = `expected a description that leaves the answer open, found "${found[0]}"; fewer labels on the line would do`;
				return [{ code: 'review-telling-description', path: facts.path + path, message }];
			});
		}),
};

function numberLinesOf({ stem }: PartItem): readonly { readonly figure: Figure; readonly path: string }[] {
	return stem.flatMap((block, index) =>
		block.kind === 'figure' && block.figure.kind === 'number-line'
			? [{ figure: block.figure, path: `/stem/${index}/figure` }]
			: [],
	);
}

/** The number asked for: the value, or the number the right option shows. */
function findAnswer(facts: PartFacts): number | undefined {
	if ('key' in facts.key && facts.key.key.kind === 'value') return facts.key.key.value;
	return optionEntries(facts).find(({ isKey }) => isKey)?.number;
}
