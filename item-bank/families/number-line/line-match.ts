import type { NumberLineFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { drawn, writeTerms, written } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { letter } from '../options.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { paragraph } from '../writing.ts';
import { evenLine, layLine, orientation, reachFor } from './line.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1b', '6.CE.2.a');
const parameters = {
	least: integer('Length of the shorter arrow.', 1, 8, 2),
	largest: integer('Length of the longer arrow.', 3, 9, 7),
	pairs: integer('Expressions to find lines for.', 2, 3, 2),
	orientation,
};

/** Sums of the same two sizes to be matched with arrows, one line more than sums. */
export const lineMatch = defineFamily({
	id: 'line-match',
	version: 1,
	name: 'Match sums and arrows',
	sentence: 'Gives sums of the same two sizes and number lines with arrows to match; one line is left over.',
	parameters,
	standards: alignments,
	given: ['number-line'],
	kinds: ['match'],
	dok: [2],
	targets: ['signs-dropped', 'sizes-subtracted-first-sign-kept', 'leading-minus-parked'],
	features: ['reading'],
	plans: (values) => [planFor(values)],
	make: ({ random, lot }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [a = 0, b = 0] = numbers;
		const lies = layLine(values.orientation, lot);
		const sums = random.shuffle([
			[a, -b],
			[-a, b],
			[-a, -b],
		]);
		const chosen = values.pairs === 3 ? [...sums, [a, b]] : sums;
		const reach = reachFor(chosen.flatMap(runningTotals));
		const line = (arrows: readonly number[]): NumberLineFigure => ({
			...evenLine(lies, reach),
			labels: 'ends-and-zero',
			arrows,
		});
		const left = chosen.slice(0, values.pairs).map((terms) => ({ content: written(writeTerms(terms, 'adding')) }));
		const right = random.shuffle(chosen).map((terms) => ({ content: drawn(line(terms)) }));
		return {
			kind: 'match',
			name: `Match sums and arrows: ${a} and ${b}, ${lies}`,
			given: 'number-line',
			answerIn: 'number-line',
			stem: [
				paragraph('On each number line, the first arrow starts at zero.'),
				paragraph('Match each expression with the number line that shows it. One number line is left over.'),
			],
			left: letter(left),
			right: letter(right),
			partners: 'shows',
			credit: 'parts',
			points: 2,
			dok: 2,
			alignments,
			tags: ['addition', 'arrows'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest }: Values): NumberPlan {
	return {
		slots: signSlots('++', Math.max(2, least), largest),
		rules: [differentSizes, tellingAnswer(([a = 0, b = 0]) => a - b)],
	};
}
