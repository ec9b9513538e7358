import { parseMathematics } from '../../expression/parse.ts';
import type { Item } from '../../types.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { tagStatement } from '../pattern-tags.ts';
import { paragraph } from '../writing.ts';

const plain = alignTo('6.2(C)', '6.NS.C.7a');
const sizes = alignTo('6.2(B)', '6.2(C)', '6.NS.C.7c', '6.NS.C.7d');
const parameters = {
	least: integer('Smallest size of a number.', 1, 900, 2),
	largest: integer('Largest size of a number.', 3, 999, 20),
	compares: word('What is compared.', ['any', 'numbers', 'absolute-values']),
};
const relations = ['<', '=', '>'] as const;

/** Two numbers, or absolute values, to be compared by choosing the sign between them. */
export const comparison = defineFamily({
	id: 'comparison',
	version: 1,
	name: 'Comparison sign',
	sentence: 'Gives two numbers or absolute values and asks for the sign between them.',
	parameters,
	standards: joinAlignments(plain, sizes),
	given: ['symbols'],
	kinds: ['inline-choice'],
	dok: [1, 2],
	targets: ['order-by-size', 'absolute-value-as-opposite'],
	features: [],
	plans: (values) => [planFor(values)],
	make: ({ random, lot }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [a = 0, b = 0] = numbers;
		const compares = values.compares === 'any' ? (lot % 2 === 0 ? 'numbers' : 'absolute-values') : values.compares;
		// A number and its own absolute value are compared once in a while, so that = is sometimes right.
		const statement =
			compares === 'numbers'
				? `${a} _ ${b}`
				: Math.floor(lot / 4) % 4 === 0
					? `|${a}| _ |${-a}|`
					: Math.floor(lot / 4) % 4 === 1
						? `${b} _ |${a}|`
						: `|${a}| _ |${b}|`;
		const choices = relations.map((math, index) => {
			const mathematics = parseMathematics(statement.replace('_', math));
			const patterns = mathematics.kind === 'statement' ? tagStatement(mathematics) : [];
			const id = 'abc'.charAt(index);
			return patterns.length > 0 ? { id, math, patterns } : { id, math };
		});
		return {
			kind: 'inline-choice',
			name: `Compare: ${statement.replace('_', '?')}`,
			given: 'symbols',
			answerIn: 'statement',
			stem: [paragraph('Choose the sign that makes the statement true.')],
			statement,
			choices,
			points: 1,
			dok: compares === 'numbers' ? 1 : 2,
			alignments: compares === 'numbers' ? plain : sizes,
			tags: compares === 'numbers' ? ['order'] : ['order', 'absolute-value'],
		} satisfies Item;
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest: most }: Values): NumberPlan {
	return {
		slots: [
			{ least, most, sign: 'minus' },
			{ least, most, sign: 'any' },
		],
		rules: [
			{ name: 'the numbers differ in size', holds: ([a = 0, b = 0]) => Math.abs(a) !== Math.abs(b) },
			{
				name: 'the order by size differs from the order of the numbers',
				holds: ([a = 0, b = 0]) => a < b === Math.abs(a) > Math.abs(b),
			},
		],
	};
}
