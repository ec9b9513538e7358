import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy } from '../number-answer.ts';
import { crossing, crossings, differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { askOperation } from './two-numbers.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1c', '7.3(A)', '6.CE.2.b');
const parameters = {
	least: integer('Smallest size of a number.', 1, 900, 2),
	largest: integer('Largest size of a number.', 3, 999, 20),
	first: word('Sign of the number subtracted from.', ['any', 'positive', 'negative']),
	crossing: word('Whether the difference lies on the other side of zero than the number subtracted from.', crossings),
	answeredBy,
};

/** Differences in which a negative integer is subtracted. */
export const minusNegative = defineFamily({
	id: 'minus-negative',
	version: 1,
	name: 'Subtracting a negative integer',
	sentence: 'Asks for the difference when a negative integer is subtracted from a positive or a negative one.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['choice', 'gridded'],
	dok: [1],
	targets: [
		'signs-dropped',
		'second-minus-lost',
		'two-minuses-make-plus',
		'operation-changed-sign-kept',
		'both-numbers-flipped',
		'subtraction-reversed',
	],
	features: ['sizeBand', 'crossesZero', 'signs'],
	plans: (values) => firstSigns(values).map((sign) => planFor(values, sign)),
	make: (draw, values) => {
		const sign = draw.random.pick(firstSigns(values));
		const numbers = drawNumbers(draw.random, planFor(values, sign));
		if (numbers === undefined) return undefined;
		return askOperation(draw, values.answeredBy, 'subtract', numbers, {
			name: sign === '+' ? 'Positive minus negative' : 'Negative minus negative',
			alignments,
			tags: ['subtraction', sign === '+' ? 'positive-minus-negative' : 'negative-minus-negative'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function firstSigns({ first }: Values): readonly string[] {
	return first === 'any' ? ['+', '-'] : [first === 'positive' ? '+' : '-'];
}

function planFor({ least, largest, crossing: asked }: Values, sign: string): NumberPlan {
	return {
		slots: signSlots(`${sign}-`, least, largest),
		rules: [
			differentSizes,
			tellingAnswer(([a = 0, b = 0]) => a - b),
			...crossing(asked, ([a = 0, b = 0]) => [a, a - b]),
		],
	};
}
