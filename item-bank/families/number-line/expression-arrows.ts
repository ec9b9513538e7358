import { parseExpression } from '../../expression/parse.ts';
import { subjectOf } from '../../patterns/subject.ts';
import type { NumberLineFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { drawn, notShowing, otherSigns, pickWrong, sumOf, writeTerms } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { crossing, crossings, differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { placeKey } from '../options.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { createTagger } from '../pattern-tags.ts';
import { paragraph } from '../writing.ts';
import { evenLine, layLine, orientation, reachFor } from './line.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1b', '6.CE.2.a');
const parameters = {
	arrows: word('How many arrows there are.', ['any', 'two', 'three']),
	least: integer('Length of the shortest arrow.', 1, 10, 2),
	largest: integer('Length of the longest arrow.', 3, 12, 8),
	crossing: word('Whether the walk passes zero.', crossings),
	orientation,
};

/** The number line that shows a sum, among lines of what wrong ideas make of it. */
export const expressionArrows = defineFamily({
	id: 'expression-arrows',
	version: 1,
	name: 'Arrows for an expression',
	sentence: 'Gives a sum or difference and asks which number line with arrows shows it.',
	parameters,
	standards: alignments,
	given: ['number-line'],
	kinds: ['choice'],
	dok: [2],
	targets: ['signs-dropped', 'leading-minus-parked', 'sizes-subtracted-first-sign-kept', 'direction-by-operation'],
	features: ['sizeBand', 'crossesZero', 'signs', 'terms'],
	plans: (values) => countsOf(values).map((count) => planFor(values, count)),
	make: (draw, values) => {
		const terms = drawNumbers(draw.random, planFor(values, draw.random.pick(countsOf(values))));
		if (terms === undefined) return undefined;
		const lies = layLine(values.orientation, draw.lot);
		const expression = writeTerms(terms, draw.lot % 2 === 0 ? 'adding' : 'subtracting');
		const asked = parseExpression(expression);
		const tagger = createTagger([subjectOf(asked)], sumOf(terms), true);
		const walks = otherSigns(terms).filter((walk) => isWithinReach(walk));
		// One scale for all lines, or the line with the widest scale would stand out.
		const reach = reachFor([...walks, terms].flatMap(runningTotals));
		const show = (arrows: readonly number[]): NumberLineFigure => ({
			...evenLine(lies, reach),
			labels: 'every-tick',
			arrows,
		});
		const wrong = pickWrong(draw.random, notShowing(walks.map(show), asked), tagger, 2, drawn);
		if (wrong === undefined) return undefined;
		return {
			kind: 'choice',
			name: `Number line for ${expression}, ${lies}`,
			given: 'number-line',
			answerIn: 'number-line',
			stem: [
				paragraph(`On each number line, the first arrow starts at zero. Which number line shows \`${expression}\`?`),
			],
			options: placeKey(draw, { content: drawn(show(terms)) }, wrong),
			rule: { kind: 'shows', expression },
			points: 1,
			dok: 2,
			alignments,
			tags: ['addition', 'arrows', ...(terms.length === 2 ? [] : ['several-steps'])],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function countsOf({ arrows }: Values): readonly number[] {
	return arrows === 'any' ? [2, 3] : [arrows === 'two' ? 2 : 3];
}

function isWithinReach(walk: readonly number[]): boolean {
	return runningTotals(walk).every((stop) => Math.abs(stop) <= 14);
}

function planFor({ least, largest: most, crossing: asked }: Values, count: number): NumberPlan {
	return {
		slots: Array.from({ length: count }, () => ({ least, most, sign: 'any' as const })),
		rules: [
			differentSizes,
			{ name: 'an arrow points to the negative side', holds: (terms) => terms.some((term) => term < 0) },
			{ name: 'the walk stays within 14 of zero', holds: isWithinReach },
			{ name: 'the walk does not stop at zero', holds: (terms) => !runningTotals(terms).includes(0) },
			tellingAnswer(sumOf),
			...crossing(asked, runningTotals),
		],
	};
}
