import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy } from '../number-answer.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, type NumberRule, signSlots } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { askOperation } from './two-numbers.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1c', '7.3(A)', '6.CE.2.b');
const parameters = {
	least: integer('Smallest size of a number.', 1, 900, 2),
	largest: integer('Largest size of a number.', 3, 999, 20),
	first: word('Sign of the number subtracted from; a positive one is smaller than what is subtracted.', [
		'any',
		'positive',
		'negative',
	]),
	answeredBy,
};

/** Differences below zero: a positive integer subtracted from a smaller positive or from a negative one. */
export const differenceOfTwo = defineFamily({
	id: 'difference-of-two',
	version: 1,
	name: 'Difference below zero',
	sentence: 'Asks for the difference when a positive integer is subtracted from a smaller or a negative one.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['choice', 'gridded'],
	dok: [1],
	targets: [
		'leading-minus-parked',
		'two-minuses-make-plus',
		'larger-minus-smaller',
		'subtraction-reversed',
		'wall-at-zero',
		'operation-changed-sign-kept',
	],
	features: ['sizeBand', 'crossesZero', 'signs'],
	plans: (values) => firstSigns(values).map((sign) => planFor(values, sign)),
	make: (draw, values) => {
		const sign = draw.random.pick(firstSigns(values));
		const numbers = drawNumbers(draw.random, planFor(values, sign));
		if (numbers === undefined) return undefined;
		return askOperation(draw, values.answeredBy, 'subtract', numbers, {
			name: sign === '+' ? 'Difference below zero' : 'Negative minus positive',
			alignments,
			tags: ['subtraction', sign === '+' ? 'crosses-zero' : 'negative-minus-positive'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

const isBelowZero: NumberRule = {
	name: 'the number subtracted is the larger one',
	holds: ([left = 0, right = 0]) => left < right,
};

function firstSigns({ first }: Values): readonly string[] {
	return first === 'any' ? ['+', '-'] : [first === 'positive' ? '+' : '-'];
}

function planFor({ least, largest }: Values, sign: string): NumberPlan {
	return {
		slots: signSlots(`${sign}+`, least, largest),
		rules: [differentSizes, isBelowZero, tellingAnswer(([a = 0, b = 0]) => a - b)],
	};
}
