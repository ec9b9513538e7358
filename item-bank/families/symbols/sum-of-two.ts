import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy } from '../number-answer.ts';
import { crossing, crossings, differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { askOperation } from './two-numbers.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1b', '7.3(A)', '6.CE.2.b');
const parameters = {
	least: integer('Smallest size of a number.', 1, 900, 2),
	largest: integer('Largest size of a number.', 3, 999, 20),
	signs: word('Signs of the two numbers.', ['any', '-+', '+-', '--']),
	crossing: word('Whether the sum lies on the other side of zero than its first number.', crossings),
	answeredBy,
};

/** Sums of two integers, at least one of them negative. */
export const sumOfTwo = defineFamily({
	id: 'sum-of-two',
	version: 1,
	name: 'Sum of two integers',
	sentence: 'Asks for the sum of two integers, at least one of them negative.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['choice', 'gridded'],
	dok: [1],
	targets: [
		'signs-dropped',
		'leading-minus-parked',
		'two-minuses-make-plus',
		'sizes-added-minus-put',
		'sizes-subtracted-first-sign-kept',
		'larger-minus-smaller',
		'product-rule-in-sum',
		'direction-by-operation',
	],
	features: ['sizeBand', 'crossesZero', 'signs'],
	plans: (values) => signsOf(values).map((signs) => planFor(values, signs)),
	make: (draw, values) => {
		const signs = draw.random.pick(signsOf(values));
		const numbers = drawNumbers(draw.random, planFor(values, signs));
		if (numbers === undefined) return undefined;
		const kind = signs === '--' ? 'like signs' : 'unlike signs';
		return askOperation(draw, values.answeredBy, 'add', numbers, {
			name: `Sum, ${kind}`,
			alignments,
			tags: ['addition', signs === '--' ? 'like-signs' : 'unlike-signs'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function signsOf({ signs }: Values): readonly string[] {
	return signs === 'any' ? ['-+', '+-', '--'] : [signs];
}

function planFor({ least, largest: most, crossing: asked }: Values, signs: string): NumberPlan {
	return {
		slots: signSlots(signs, least, most),
		rules: [differentSizes, tellingAnswer(([a = 0, b = 0]) => a + b), ...crossing(asked, runningTotals)],
	};
}
