import { evaluate } from '../../expression/evaluate.ts';
import { parseExpression, parseMathematics } from '../../expression/parse.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { tagStatement } from '../pattern-tags.ts';
import { inner, paragraph } from '../writing.ts';

const opposites = alignTo('6.2(B)', '6.NS.C.6a', '6.NS.C.7c');
const products = alignTo('6.3(D)', '7.NS.A.2a', '7.NS.A.2b', '7.3(A)', '6.CE.2.b');
const parameters = {
	asks: word('What stands before the gap.', ['any', 'opposite', 'product', 'quotient']),
	least: integer('Smallest size of a number.', 1, 20, 3),
	largest: integer('Largest size of a number.', 4, 40, 12),
};

/** The value of an opposite, an absolute value, a product or a quotient, chosen by its sign. */
export const valueInGap = defineFamily({
	id: 'value-in-gap',
	version: 1,
	name: 'Value in a gap',
	sentence: 'Asks for the value with the right sign of an opposite, an absolute value, a product or a quotient.',
	parameters,
	standards: joinAlignments(opposites, products),
	given: ['symbols'],
	kinds: ['inline-choice'],
	dok: [1],
	targets: ['sum-rule-in-product', 'any-negative-makes-negative', 'absolute-value-as-opposite', 'second-minus-lost'],
	features: [],
	plans: (values) => [planFor(values)],
	make: ({ random, lot }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [a = 0, b = 0] = numbers;
		const asks =
			values.asks === 'any' ? random.pick(['opposite', 'opposite', 'product', 'quotient'] as const) : values.asks;
		const forms = [`-(${-Math.abs(a)})`, `-|${a}|`, `|${-Math.abs(a)}|`];
		const expression =
			asks === 'product'
				? `${a} × ${inner(b)}`
				: asks === 'quotient'
					? `${a * b} ÷ ${inner(b)}`
					: (forms[lot % forms.length] ?? '');
		const size = Math.abs(evaluate(parseExpression(expression)));
		const statement = `${expression} = _`;
		const choices = [-size, size].map((value, index) => {
			const mathematics = parseMathematics(`${expression} = ${value}`);
			const patterns = mathematics.kind === 'statement' ? tagStatement(mathematics) : [];
			const option = { id: 'ab'.charAt(index), math: String(value) };
			return patterns.length > 0 ? { ...option, patterns } : option;
		});
		return {
			kind: 'inline-choice',
			name: `Value: ${expression}`,
			given: 'symbols',
			answerIn: 'statement',
			stem: [paragraph('Choose the value that makes the equation true.')],
			statement,
			choices,
			points: 1,
			dok: 1,
			alignments: asks === 'opposite' ? opposites : products,
			tags: asks === 'opposite' ? ['opposite', 'absolute-value'] : [asks === 'product' ? 'multiplication' : 'division'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest: most }: Values): NumberPlan {
	return {
		slots: [
			{ least, most, sign: 'any' },
			{ least, most, sign: 'any' },
		],
		rules: [differentSizes, { name: 'a number is negative', holds: ([a = 0, b = 0]) => a < 0 || b < 0 }],
	};
}
