import { twoNumbers } from '../../patterns/subject.ts';
import type { NumberLineFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { crossing, crossings, differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { paragraph, writeOperation } from '../writing.ts';
import { evenLine, layLine, orientation } from './line.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1b', '6.CE.2.a');
const parameters = {
	least: integer('Smallest size of a number; even ones are taken.', 2, 10, 2),
	largest: integer('Largest size of a number; even ones are taken.', 4, 20, 16),
	crossing: word('Whether the arrow passes zero.', crossings),
	orientation,
	answeredBy,
};
/** Ticks stand for two, so that counting them is not enough. */
const tickEvery = 2;

/** The value of a sum from an arrow on a line whose ticks are not numbered. */
export const arrowValue = defineFamily({
	id: 'arrow-value',
	version: 1,
	name: 'Value from an arrow',
	sentence: 'Shows a sum as an arrow on a number line with a tick for every two, and asks for its value.',
	parameters,
	standards: alignments,
	given: ['number-line'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['start-tick-counted', 'zero-skipped', 'direction-by-operation', 'larger-minus-smaller'],
	features: ['sizeBand', 'crossesZero', 'signs'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [start = 0, move = 0] = numbers;
		const lies = layLine(values.orientation, draw.lot);
		const expression = writeOperation('add', start, move);
		const reach = Math.ceil((Math.max(Math.abs(start), Math.abs(start + move)) + 1) / 10) * 10;
		const figure: NumberLineFigure = {
			...evenLine(lies, reach, tickEvery),
			labels: 'ends-and-zero',
			start,
			arrows: [move],
		};
		return askNumber(draw, values.answeredBy, {
			name: `Arrow for ${expression}, ${lies}`,
			given: 'number-line',
			stem: [
				paragraph(`The arrow starts at \`${start}\` and shows \`${expression}\`.`),
				{ kind: 'figure', figure },
				paragraph(`What is \`${expression}\`?`),
			],
			expression,
			key: start + move,
			subjects: [twoNumbers('add', start, move), { kind: 'walk', start, moves: [move], tickEvery }],
			points: 1,
			dok: 2,
			alignments,
			tags: ['addition', 'arrows'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest: most, crossing: asked }: Values): NumberPlan {
	return {
		slots: [
			{ least, most, step: tickEvery, sign: 'any' },
			{ least: Math.max(4, least), most, step: tickEvery, sign: 'any' },
		],
		rules: [
			differentSizes,
			{ name: 'a number is negative', holds: ([start = 0, move = 0]) => start < 0 || move < 0 },
			tellingAnswer(([start = 0, move = 0]) => start + move),
			{ name: 'the arrow ends within 20 of zero', holds: ([a = 0, b = 0]) => Math.abs(a + b) <= 20 },
			...crossing(asked, runningTotals),
		],
	};
}
