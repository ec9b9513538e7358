import type { PartFacts } from '../facts.ts';
import { haladyna, type Rule } from '../rule.ts';

/** Two signs in a row before a number, as typed in a statement with a gap: its pieces are printed as they were typed. */
export const doubledInSymbols = /[-–−+*×÷/]\s*[-–−]\s*\d/;
/** In words only true signs are certain to be mathematics. */
const doubledInWords = /[−+×÷]\s*−\s*\d/;

/**
 * A sign after a sign without parentheses, where nothing prints the parentheses: the statement and the choices of an
 * inline choice, and mathematics in words. Everywhere else mathematics is printed from its tree, which has them.
 */
export const doubledSign: Rule = {
	severity: 'stop',
	guideline: haladyna(12),
	find: ({ words, parts }) => {
		const typed = parts.flatMap(symbolsOf).filter(({ text }) => doubledInSymbols.test(text));
		const told = words.filter((text) => doubledInWords.test(text.words));
		const found = [...typed, ...told.map((text) => ({ path: text.path, text: text.words }))];
		return found.map(({ path, text }) => {
			const message = `expected parentheses around a negative number after a sign, as in 3 − (−8), found "${text}"`;
			return { code: 'sign-doubled', path, message };
		});
	},
};

function symbolsOf({ part, path }: PartFacts): readonly { readonly path: string; readonly text: string }[] {
	if (part.kind !== 'inline-choice') return [];
	const choices = part.choices.map(({ math }, index) => ({ path: `${path}/choices/${index}/math`, text: math }));
	return [{ path: `${path}/statement`, text: part.statement }, ...choices];
}
