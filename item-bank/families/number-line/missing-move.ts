import type { NumberLineFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { inner, paragraph } from '../writing.ts';
import { evenLine, layLine, orientation } from './line.ts';

const alignments = alignTo('6.3(C)', '6.2(C)', '7.NS.A.1b', '7.NS.A.1c');
const parameters = {
	largest: integer('Farthest place from zero.', 6, 14, 10),
	orientation,
};

/** The second of two moves along a number line from one point to another. */
export const missingMove = defineFamily({
	id: 'missing-move',
	version: 1,
	name: 'Second of two moves',
	sentence: 'Shows where two moves along a number line start and finish, tells the first and asks for the second.',
	parameters,
	standards: alignments,
	given: ['number-line'],
	kinds: ['gridded'],
	dok: [3],
	targets: ['subtraction-reversed', 'sign-left-off', 'second-minus-lost'],
	features: ['sizeBand', 'signs', 'crossesZero', 'subtractsNegative'],
	plans: (values) => [planFor(values)],
	make: ({ random, lot }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [start = 0, finish = 0, move = 0] = numbers;
		const lies = layLine(values.orientation, lot);
		const [ahead, back] = lies === 'horizontal' ? ['to the right', 'to the left'] : ['up', 'down'];
		const figure: NumberLineFigure = {
			...evenLine(lies, values.largest),
			labels: 'ends-and-zero',
			points: [
				{ at: start, label: 'S' },
				{ at: finish, label: 'F' },
			],
		};
		const first = `${Math.abs(move)} units ${move > 0 ? ahead : back}`;
		return {
			kind: 'gridded',
			name: `Second of two moves from ${start} to ${finish}, ${lies}`,
			given: 'number-line',
			answerIn: 'number',
			stem: [
				paragraph('A marker moves from point S to point F in two moves.'),
				{ kind: 'figure', figure },
				paragraph(
					`The first move is ${first}. Which number shows the second move? Use a negative number for a move ${back}.`,
				),
			],
			expression: `${finish} - (${start} + ${inner(move)})`,
			grid: 'plain-sign-first',
			points: 2,
			dok: 3,
			alignments,
			tags: ['several-steps', 'missing-number'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ largest }: Values): NumberPlan {
	const place = { least: 2, most: largest - 1, sign: 'any' } as const;
	return {
		slots: [place, place, { least: 4, most: largest + 6, sign: 'any' }],
		rules: [
			differentSizes,
			{ name: 'start and finish lie on both sides of zero', holds: ([s = 0, f = 0]) => s * f < 0 },
			{
				name: 'the first move stays near the line',
				holds: ([s = 0, , m = 0]) => Math.abs(s + m) <= largest && s + m !== 0,
			},
			{ name: 'the second move is no shorter than 2', holds: ([s = 0, f = 0, m = 0]) => Math.abs(f - s - m) > 1 },
			{ name: 'the two moves differ in length', holds: ([s = 0, f = 0, m = 0]) => Math.abs(f - s - m) !== Math.abs(m) },
		],
	};
}
