import { evaluate } from '../../expression/evaluate.ts';
import { expressionsShown } from '../../figures/expressions-shown.ts';
import { workOf } from '../../items/asked.ts';
import type { Figure } from '../../types.ts';
import { optionEntries, type PartFacts } from '../facts.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** What a stem asks when it asks for no more than what its figure shows. */
const plainQuestion =
	/(?:what (?:is|number is) (?:the )?(?:total )?value of (?:this|the|these) (?:set of )?(?:counters|set)|what (?:number|value|sum) (?:do|does) (?:the|these|this) (?:counters|arrows?|picture|figure|model|number line|point)(?: \p{Lu})? (?:show|stand for|end at))\?$/iu;

/** A stem that asks only what its one figure shows, and a key of another value. */
export const figureMismatch: Rule = {
	severity: 'advise',
	guideline: commonPractice,
	find: ({ parts }) =>
		parts.flatMap((facts) => {
			const figure = findFigure(facts);
			const answer = figure && findAnswer(facts);
			const shown = figure && expressionsShown(figure)[0];
			if (answer === undefined || shown === undefined) return [];
			const value = evaluate(shown);
			if (value === answer) return [];
			const message = `expected a key worth what the figure shows, ${value}, found ${answer}`;
			return [{ code: 'review-figure-mismatch', path: `${facts.path}/stem`, message }];
		}),
};

/** The only figure of a stem that ends in a plain question about it. */
function findFigure({ part: { stem } }: PartFacts): Figure | undefined {
	const figures = stem.flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
	const paragraphs = stem.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : []));
	return figures.length === 1 && plainQuestion.test(paragraphs.at(-1)?.trim() ?? '') ? figures[0] : undefined;
}

function findAnswer(facts: PartFacts): number | undefined {
	if ('key' in facts.key && facts.key.key.kind === 'value') return facts.key.key.value;
	return workOf(facts.part) === undefined ? undefined : optionEntries(facts).find(({ isKey }) => isKey)?.number;
}
