import type { CountersFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { worths } from '../counters/set-of-counters.ts';
import { defineFamily } from '../family.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { inner, paragraph } from '../writing.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1c', '6.CE.2.a', '6.1(G)');
const parameters = {
	least: integer('Smallest size of a number.', 1, 8, 2),
	largest: integer('Largest size of a number.', 3, 9, 7),
	start: word('Sign of the counters shown.', ['any', 'plus', 'minus']),
};

/** How zero pairs make a subtraction possible. */
export const explainCounters = defineFamily({
	id: 'explain-counters',
	version: 1,
	name: 'Explain a subtraction with counters',
	sentence: 'Shows counters and asks how to take away counters of the other sign.',
	parameters,
	standards: alignments,
	given: ['counters'],
	kinds: ['explanation'],
	dok: [3],
	targets: ['second-minus-lost', 'operation-changed-sign-kept', 'all-counters-counted'],
	features: [],
	plans: (values) => [planFor(values)],
	make: ({ random, lot }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [there = 0, taken = 0] = numbers;
		const isPlus = values.start === 'any' ? lot % 2 === 0 : values.start === 'plus';
		const [own, other] = isPlus ? ['plus', 'minus'] : ['minus', 'plus'];
		const figure: CountersFigure = { kind: 'counters', plus: isPlus ? there : 0, minus: isPlus ? 0 : there };
		const expression = isPlus ? `${there} - ${inner(-taken)}` : `${-there} - ${taken}`;
		const value = isPlus ? there + taken : -there - taken;
		return {
			kind: 'explanation',
			name: `Explain ${expression} with counters`,
			given: 'counters',
			answerIn: 'words',
			stem: [
				worths,
				{ kind: 'figure', figure },
				paragraph(
					`There are no ${other} counters in this set. Explain how counters can still be used to find \`${expression}\`, and give its value.`,
				),
			],
			lines: 8,
			rubric: [
				{
					points: 3,
					descriptor: `Adds at least ${taken} zero pairs, says that they do not change the value, takes away ${taken} ${other} counters and gives \`${value}\`.`,
					sample: `Add ${taken} zero pairs. The value stays the same because each pair is worth \`0\`. Now take away ${taken} ${other} counters. ${there + taken} ${own} counters are left, so the value is \`${value}\`.`,
				},
				{
					points: 2,
					descriptor: `Adds zero pairs, takes away ${other} counters and gives \`${value}\`, but does not say why zero pairs may be added.`,
					sample: `Add ${taken} pairs and take away ${taken} ${other} counters. The value is \`${value}\`.`,
				},
				{
					points: 1,
					descriptor: `Gives \`${value}\` without using zero pairs, or uses zero pairs without reaching \`${value}\`.`,
					sample: `It is \`${value}\` because taking away ${other} counters is like adding ${own} counters.`,
				},
				{
					points: 0,
					descriptor: 'Gives another value and no right use of the counters.',
					sample: 'It cannot be done with these counters.',
				},
			],
			points: 3,
			dok: 3,
			alignments,
			tags: ['subtraction', 'zero-pairs', 'explanation'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest }: Values): NumberPlan {
	return { slots: signSlots('++', Math.max(2, least), largest), rules: [differentSizes] };
}
