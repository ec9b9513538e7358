import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { askOperation } from './two-numbers.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.2b', '7.3(A)', '6.CE.2.b');
const parameters = {
	least: integer('Smallest size of divisor and quotient.', 1, 20, 3),
	largest: integer('Largest size of divisor and quotient.', 2, 25, 12),
	signs: word('Signs of the number divided and of the divisor.', ['any', '-+', '+-', '--']),
};

/** Quotients of two integers without a remainder, at least one of them negative. */
export const quotientOfTwo = defineFamily({
	id: 'quotient-of-two',
	version: 1,
	name: 'Quotient of two integers',
	sentence: 'Asks for the quotient of two integers, at least one of them negative, without a remainder.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['gridded'],
	dok: [1],
	targets: ['signs-dropped', 'sum-rule-in-product', 'any-negative-makes-negative'],
	features: ['sizeBand', 'signs'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const signs = values.signs === 'any' ? draw.random.pick(['-+', '+-', '--']) : values.signs;
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [quotient = 0, divisor = 0] = numbers;
		const [first, second] = [signs.startsWith('-') ? -1 : 1, signs.endsWith('-') ? -1 : 1];
		const like = signs === '--';
		// Patterns lead to one wrong number alone, too few to choose from.
		return askOperation(draw, 'gridded', 'divide', [first * quotient * divisor, second * divisor], {
			name: `Quotient, ${like ? 'like' : 'unlike'} signs`,
			alignments,
			tags: ['division', like ? 'like-signs' : 'unlike-signs'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest }: Values): NumberPlan {
	return { slots: signSlots('++', least, largest), rules: [differentSizes] };
}
