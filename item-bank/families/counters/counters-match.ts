import type { CountersFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { writeTerms, written } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { letter } from '../options.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { paragraph } from '../writing.ts';
import { worths } from './set-of-counters.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1a', '6.CE.2.a');
const parameters = {
	least: integer('Fewest counters of a sign.', 1, 8, 2),
	largest: integer('Most counters of a sign.', 3, 10, 7),
	pairs: integer('Expressions to find pictures for.', 2, 4, 3),
};

/** Sums to be matched with pictures of counters, one picture more than sums. */
export const countersMatch = defineFamily({
	id: 'counters-match',
	version: 1,
	name: 'Match sums and counters',
	sentence: 'Gives sums and pictures of counters to match; one picture is left over.',
	parameters,
	standards: alignments,
	given: ['counters'],
	kinds: ['match'],
	dok: [2],
	targets: ['signs-dropped', 'sizes-subtracted-first-sign-kept'],
	features: ['reading'],
	plans: (values) => [planFor(values)],
	make: ({ random }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [a = 0, b = 0, c = 0] = numbers;
		// The same two sizes with the signs changed round are what a student must tell apart.
		const sums = random.shuffle([
			[a, -b],
			[-a, b],
			[c, -a],
			[-c, a],
			[b, -c],
			[-b, c],
		]);
		const chosen = sums.slice(0, values.pairs + 1);
		const left = chosen.slice(0, values.pairs).map((terms) => ({ content: written(writeTerms(terms, 'adding')) }));
		const right = random
			.shuffle(chosen)
			.map((terms) => ({ content: { kind: 'figure', figure: picture(terms) } as const }));
		return {
			kind: 'match',
			name: `Match sums and counters: ${a}, ${b} and ${c}`,
			given: 'counters',
			answerIn: 'counters',
			stem: [worths, paragraph('Match each expression with the counters that show it. One picture is left over.')],
			left: letter(left),
			right: letter(right),
			partners: 'shows',
			credit: 'parts',
			points: 2,
			dok: 2,
			alignments,
			tags: ['addition', 'zero-pairs'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest }: Values): NumberPlan {
	return { slots: signSlots('+++', least, largest), rules: [differentSizes, tellingAnswer(([a = 0, b = 0]) => a - b)] };
}

function picture(terms: readonly number[]): CountersFigure {
	const count = (sign: 1 | -1): number =>
		terms.filter((term) => Math.sign(term) === sign).reduce((sum, term) => sum + Math.abs(term), 0);
	return { kind: 'counters', plus: count(1), minus: count(-1) };
}
