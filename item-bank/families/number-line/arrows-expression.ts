import { parseExpression } from '../../expression/parse.ts';
import { type Subject, subjectOf } from '../../patterns/subject.ts';
import type { NumberLineFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { notShown, otherSigns, pickWrong, sumOf, writeTerms, written, writtenCandidates } from '../faces.ts';
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
	largest: integer('Length of the longest arrow.', 3, 14, 9),
	crossing: word('Whether the walk passes zero.', crossings),
	orientation,
};

/** The expression that arrows on a number line show. */
export const arrowsExpression = defineFamily({
	id: 'arrows-expression',
	version: 1,
	name: 'Expression for arrows',
	sentence: 'Shows two or three arrows on a number line and asks which expression they show.',
	parameters,
	standards: alignments,
	given: ['number-line'],
	kinds: ['choice'],
	dok: [1, 2],
	targets: ['signs-dropped', 'leading-minus-parked', 'sizes-subtracted-first-sign-kept', 'sizes-added-minus-put'],
	features: ['sizeBand', 'crossesZero', 'signs', 'terms', 'reading'],
	plans: (values) => countsOf(values).map((count) => planFor(values, count)),
	make: (draw, values) => {
		const terms = drawNumbers(draw.random, planFor(values, draw.random.pick(countsOf(values))));
		if (terms === undefined) return undefined;
		const lies = layLine(values.orientation, draw.lot);
		const line = evenLine(lies, reachFor(runningTotals(terms)));
		const figure: NumberLineFigure = { ...line, labels: 'every-tick', arrows: terms };
		const style = draw.lot % 2 === 0 ? 'adding' : 'subtracting';
		const key = writeTerms(terms, style);
		const walk: Subject = { kind: 'walk', start: 0, moves: terms, tickEvery: 1 };
		const tagger = createTagger([subjectOf(parseExpression(key)), walk], sumOf(terms), true);
		const others = writtenCandidates(otherSigns(terms).map((other) => writeTerms(other, style)));
		const wrong = pickWrong(draw.random, notShown(others, figure), tagger, 3, written);
		if (wrong === undefined) return undefined;
		return {
			kind: 'choice',
			name: `Expression for arrows ${terms.join(', ')}, ${lies}`,
			given: 'number-line',
			answerIn: 'expression',
			stem: [
				paragraph('The first arrow starts at zero.'),
				{ kind: 'figure', figure },
				paragraph('Which expression do the arrows show?'),
			],
			options: placeKey(draw, { content: written(key) }, wrong),
			rule: { kind: 'shown' },
			points: 1,
			dok: terms.length === 2 ? 1 : 2,
			alignments,
			tags: ['addition', 'arrows', ...(terms.length === 2 ? [] : ['several-steps'])],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function countsOf({ arrows }: Values): readonly number[] {
	return arrows === 'any' ? [2, 3] : [arrows === 'two' ? 2 : 3];
}

function planFor({ least, largest: most, crossing: asked }: Values, count: number): NumberPlan {
	return {
		slots: Array.from({ length: count }, () => ({ least, most, sign: 'any' as const })),
		rules: [
			differentSizes,
			{ name: 'an arrow points to the negative side', holds: (terms) => terms.some((term) => term < 0) },
			{
				name: 'the walk stays within 14 of zero',
				holds: (terms) => runningTotals(terms).every((stop) => stop !== 0 && Math.abs(stop) <= 14),
			},
			tellingAnswer(sumOf),
			...crossing(asked, runningTotals),
		],
	};
}
