import type { NumberLineFigure } from '../../types.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { word } from '../parameters.ts';
import { inner, paragraph } from '../writing.ts';
import { evenLine, layLine, orientation, stepOf, tickSteps } from './line.ts';

const positions = alignTo('6.2(C)', '6.NS.C.6c');
const opposites = alignTo('6.2(B)', '6.2(C)', '6.NS.C.6a');
const sums = alignTo('6.3(C)', '7.NS.A.1b', '6.CE.2.a');
const parameters = {
	marks: word('What is to be marked.', ['any', 'number', 'opposite', 'sum']),
	tickEvery: tickSteps,
	orientation,
};

/** A point to be marked on a number line: a number, an opposite or a sum. */
export const pointMarking = defineFamily({
	id: 'point-marking',
	version: 1,
	name: 'Mark a point',
	sentence: 'Asks to mark a number, the opposite of a number, or a sum on a number line.',
	parameters,
	standards: joinAlignments(positions, opposites, sums),
	given: ['number-line'],
	kinds: ['point'],
	dok: [1, 2],
	targets: ['signs-dropped', 'start-tick-counted', 'second-minus-lost'],
	features: ['sizeBand', 'signs', 'terms', 'crossesZero', 'reading'],
	plans: (values) => [planFor(stepOf(values.tickEvery, 0))],
	make: ({ random, lot }, values) => {
		const tickEvery = stepOf(values.tickEvery, lot);
		const numbers = drawNumbers(random, planFor(tickEvery));
		if (numbers === undefined) return undefined;
		const [a = 0, b = 0] = numbers;
		const lies = layLine(values.orientation, lot);
		const marks = values.marks === 'any' ? random.pick(['number', 'opposite', 'sum'] as const) : values.marks;
		const line: NumberLineFigure = { ...evenLine(lies, 10 * tickEvery, tickEvery), labels: 'ends-and-zero' };
		const expression = marks === 'number' ? String(a) : marks === 'opposite' ? `-${inner(a)}` : `${a} + ${inner(b)}`;
		const what = marks === 'opposite' ? `the opposite of \`${a}\`` : `\`${expression}\``;
		const ticks = tickEvery === 1 ? '' : `Neighbouring ticks are ${tickEvery} apart. `;
		return {
			kind: 'point',
			name: `Mark ${marks === 'opposite' ? `the opposite of ${a}` : expression}, ${lies}`,
			given: 'number-line',
			answerIn: 'number-line',
			stem: [paragraph(`${ticks}Mark the point at ${what} on the number line.`)],
			line,
			expression,
			points: 1,
			dok: marks === 'sum' ? 2 : 1,
			alignments: marks === 'number' ? positions : marks === 'opposite' ? opposites : sums,
			tags: marks === 'sum' ? ['addition'] : marks === 'opposite' ? ['opposite', 'position'] : ['position'],
		};
	},
});

function planFor(tickEvery: number): NumberPlan {
	const [least, most] = [2 * tickEvery, 9 * tickEvery];
	return {
		slots: [
			{ least, most, step: tickEvery, sign: 'minus' },
			{ least, most, step: tickEvery, sign: 'any' },
		],
		rules: [
			{ name: 'the sum lies on the line', holds: ([a = 0, b = 0]) => Math.abs(a + b) <= most },
			{ name: 'the sum is no number of the item or 0', holds: ([a = 0, b = 0]) => a + b !== 0 && a + b !== -a },
		],
	};
}
