import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, type NumberRule, signSlots } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { askOperation } from './two-numbers.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.2a', '7.3(A)', '6.CE.2.b');
const parameters = {
	least: integer('Smallest size of a factor.', 1, 20, 3),
	largest: integer('Largest size of a factor.', 2, 25, 12),
	signs: word('Signs of the two factors.', ['any', '-+', '+-', '--']),
};

/** Products of two integers, at least one of them negative. */
export const productOfTwo = defineFamily({
	id: 'product-of-two',
	version: 1,
	name: 'Product of two integers',
	sentence: 'Asks for the product of two integers, at least one of them negative.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['gridded'],
	dok: [1],
	targets: ['signs-dropped', 'sum-rule-in-product', 'any-negative-makes-negative', 'product-read-as-difference'],
	features: ['sizeBand', 'signs'],
	plans: (values) => signsOf(values).map((signs) => planFor(values, signs)),
	make: (draw, values) => {
		const signs = draw.random.pick(signsOf(values));
		const numbers = drawNumbers(draw.random, planFor(values, signs));
		if (numbers === undefined) return undefined;
		const like = signs === '--';
		// Patterns lead to two wrong numbers at most, between which the key would always stand first or last.
		return askOperation(draw, 'gridded', 'multiply', numbers, {
			name: `Product, ${like ? 'like' : 'unlike'} signs`,
			alignments,
			tags: ['multiplication', like ? 'like-signs' : 'unlike-signs'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

const isNoDouble: NumberRule = {
	name: 'the product is not the sum or the difference of the factors',
	holds: ([a = 0, b = 0]) => ![Math.abs(a + b), Math.abs(a - b)].includes(Math.abs(a * b)),
};

function signsOf({ signs }: Values): readonly string[] {
	return signs === 'any' ? ['-+', '+-', '--'] : [signs];
}

function planFor({ least, largest: most }: Values, signs: string): NumberPlan {
	return {
		slots: signSlots(signs, least, most),
		rules: [differentSizes, isNoDouble],
	};
}
