import type { CountersFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { counterStem } from './set-of-counters.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1a', '7.NS.A.1c', '6.CE.2.a');
const parameters = {
	least: integer('Fewest counters of a sign.', 1, 8, 2),
	largest: integer('Most counters of a sign, or taken away.', 5, 12, 10),
};

/** The zero pairs a set needs before counters can be taken away. */
export const zeroPairsNeeded = defineFamily({
	id: 'zero-pairs-needed',
	version: 1,
	name: 'Zero pairs needed to take something away',
	sentence: 'Shows counters and asks for the least number of zero pairs to add before some can be taken away.',
	parameters,
	standards: alignments,
	given: ['counters'],
	kinds: ['gridded'],
	dok: [2],
	targets: ['all-counters-counted'],
	features: ['sizeBand'],
	plans: (values) => [planFor(values)],
	make: ({ random, lot }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [there = 0, others = 0, taken = 0] = numbers;
		const isMinus = lot % 2 === 0;
		const figure: CountersFigure = isMinus
			? { kind: 'counters', plus: others, minus: there }
			: { kind: 'counters', plus: there, minus: others };
		const sign = isMinus ? 'minus' : 'plus';
		return {
			kind: 'gridded',
			name: `Zero pairs needed: ${figure.plus} plus, ${figure.minus} minus, ${taken} ${sign} taken away`,
			given: 'counters',
			answerIn: 'number',
			stem: counterStem(
				figure,
				`What is the least number of zero pairs to add to this set so that ${taken} ${sign} counters can be taken away?`,
			),
			expression: `${taken} - ${there}`,
			grid: 'plain-sign-first',
			points: 1,
			dok: 2,
			alignments,
			tags: ['zero-pairs', 'subtraction'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest }: Values): NumberPlan {
	return {
		slots: signSlots('+++', least, largest),
		rules: [
			{ name: 'more are taken away than are there', holds: ([there = 0, , taken = 0]) => taken > there + 1 },
			{ name: 'plus and minus counters differ in number', holds: ([there = 0, others = 0]) => there !== others },
			{
				name: 'the number of pairs is none of the numbers',
				holds: ([there = 0, others = 0, taken = 0]) => ![there, others].includes(taken - there) && others !== taken,
			},
		],
	};
}
