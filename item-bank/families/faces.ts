import { operate } from '../expression/evaluate.ts';
import { parseExpression } from '../expression/parse.ts';
import type { Expression } from '../expression/tree.ts';
import { expressionsShown, isShownBy } from '../figures/expressions-shown.ts';
import type { Random } from '../random/random.ts';
import type { Figure } from '../types.ts';
import { type Face, mathematics } from './options.ts';
import type { OptionTagger } from './pattern-tags.ts';
import { type Link, writeChain } from './writing.ts';

/** Something an option may show, and the mathematics it says. */
export interface Candidate<Shown> {
	readonly shown: Shown;
	readonly says: Expression;
}

/** Wrong candidates that a pattern leads to, as many as asked for, each with patterns; undefined when there are fewer. */
export function pickWrong<Shown>(
	random: Random,
	candidates: readonly Candidate<Shown>[],
	tagger: OptionTagger,
	count: number,
	face: (shown: Shown) => Face['content'],
): readonly Face[] | undefined {
	const faces: Face[] = [];
	const groups = new Set<string>();
	for (const { shown, says } of random.shuffle(candidates)) {
		const patterns = tagger.tag(says);
		// Two options that the same patterns lead to would tell the same of a student.
		const group = patterns.join(' ');
		if (patterns.length === 0 || groups.has(group)) continue;
		groups.add(group);
		faces.push({ content: face(shown), patterns });
		if (faces.length === count) return faces;
	}
	return undefined;
}

/** Expressions as candidates. */
export function writtenCandidates(texts: readonly string[]): readonly Candidate<string>[] {
	return texts.map((shown) => ({ shown, says: parseExpression(shown) }));
}

/** Figures as candidates: each says the first expression it shows. */
export function drawnCandidates(figures: readonly Figure[]): readonly Candidate<Figure>[] {
	return figures.flatMap((shown) => {
		const [says] = expressionsShown(shown);
		return says === undefined ? [] : [{ shown, says }];
	});
}

/** The content of an option that shows mathematics. */
export const written = mathematics;

/** The content of an option that shows a figure. */
export function drawn(figure: Figure): Face['content'] {
	return { kind: 'figure', figure };
}

/** Candidates that a figure does not show. */
export function notShown<Shown>(candidates: readonly Candidate<Shown>[], figure: Figure): readonly Candidate<Shown>[] {
	return candidates.filter(({ says }) => !isShownBy(says, figure));
}

/** Figures that do not show an expression, as candidates. */
export function notShowing(figures: readonly Figure[], expression: Expression): readonly Candidate<Figure>[] {
	return drawnCandidates(figures.filter((figure) => !isShownBy(expression, figure)));
}

/** Sums with every choice of signs for sizes, but the one given: 4 + 7, -4 + (-7) and so on. */
export function otherSigns(terms: readonly number[]): readonly (readonly number[])[] {
	const all = Array.from({ length: 2 ** terms.length }, (_, mask) =>
		terms.map((term, index) => (Math.floor(mask / 2 ** index) % 2 === 1 ? -Math.abs(term) : Math.abs(term))),
	);
	return all.filter((other) => other.some((term, index) => term !== terms[index]));
}

/** Terms of a sum as authors type them: negative ones added in parentheses, or subtracted without. */
export function writeTerms(terms: readonly number[], style: 'adding' | 'subtracting'): string {
	const [first = 0, ...rest] = terms;
	return writeChain(
		first,
		rest.map(
			(term): Link =>
				style === 'subtracting' && term < 0
					? { operator: 'subtract', number: -term }
					: { operator: 'add', number: term },
		),
	);
}

/** The sum of terms. */
export function sumOf(terms: readonly number[]): number {
	return terms.reduce((sum, term) => operate('add', sum, term), 0);
}
