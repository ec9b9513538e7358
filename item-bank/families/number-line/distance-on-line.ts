import { expressionOf, twoNumbers } from '../../patterns/subject.ts';
import type { NumberLineFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { type ValuesOf, word } from '../parameters.ts';
import { inner, paragraph } from '../writing.ts';
import { evenLine, layLine, orientation, stepOf, tickSteps } from './line.ts';

const alignments = alignTo('6.3(C)', '6.2(B)', '7.NS.A.1c', '6.CE.2.c');
const parameters = {
	sides: word('On which sides of zero the points lie.', ['any', 'both-negative', 'both-sides']),
	tickEvery: tickSteps,
	orientation,
	answeredBy,
};

/** The distance between two points on a number line. */
export const distanceOnLine = defineFamily({
	id: 'distance-on-line',
	version: 1,
	name: 'Distance between two points',
	sentence: 'Shows two points on a number line, one negative at least, and asks for the distance between them.',
	parameters,
	standards: alignments,
	given: ['number-line'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['distance-adds-sizes', 'absolute-value-as-opposite', 'second-minus-lost', 'larger-minus-smaller'],
	features: ['sizeBand', 'signs', 'crossesZero'],
	plans: (values) => [planFor(values, stepOf(values.tickEvery, 0))],
	make: (draw, values) => {
		const tickEvery = stepOf(values.tickEvery, draw.lot);
		const numbers = drawNumbers(draw.random, planFor(values, tickEvery));
		if (numbers === undefined) return undefined;
		const [p = 0, q = 0] = numbers;
		const lies = layLine(values.orientation, draw.lot);
		const reach = (tickEvery === 1 ? 12 : 10) * tickEvery;
		const figure: NumberLineFigure = {
			...evenLine(lies, reach, tickEvery),
			labels: 'ends-and-zero',
			points: [
				{ at: p, label: 'P' },
				{ at: q, label: 'Q' },
			],
		};
		const expression = `|${q} - ${inner(p)}|`;
		return askNumber(draw, values.answeredBy, {
			name: `Distance between ${p} and ${q}, ${lies}`,
			given: 'number-line',
			stem: [{ kind: 'figure', figure }, paragraph('What is the distance between points P and Q?')],
			expression,
			key: Math.abs(q - p),
			subjects: [
				{ kind: 'expression', expression: absoluteDifference(q, p) },
				{ kind: 'distance', from: q, to: p },
				twoNumbers('subtract', q, p),
			],
			points: 1,
			dok: 2,
			alignments,
			tags: ['distance', 'absolute-value'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function absoluteDifference(left: number, right: number) {
	return { kind: 'absolute', of: expressionOf(twoNumbers('subtract', left, right)) } as const;
}

function planFor({ sides }: Values, tickEvery: number): NumberPlan {
	const [least, most] = [2 * tickEvery, (tickEvery === 1 ? 11 : 9) * tickEvery];
	return {
		slots: [
			{ least, most, step: tickEvery, sign: 'minus' },
			{
				least,
				most,
				step: tickEvery,
				sign: sides === 'both-negative' ? 'minus' : sides === 'both-sides' ? 'plus' : 'any',
			},
		],
		rules: [
			differentSizes,
			{ name: 'point P lies to the left of point Q or below it', holds: ([p = 0, q = 0]) => p < q },
			{ name: 'the points are at least two ticks apart', holds: ([p = 0, q = 0]) => q - p >= 2 * tickEvery },
			tellingAnswer(([p = 0, q = 0]) => q - p),
		],
	};
}
