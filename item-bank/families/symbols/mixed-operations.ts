import { evaluate } from '../../expression/evaluate.ts';
import { parseExpression } from '../../expression/parse.ts';
import { subjectOf } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { inner, paragraph } from '../writing.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.2c', '7.NS.A.3', '7.3(A)');
const parameters = {
	least: integer('Smallest size of a number.', 1, 12, 2),
	largest: integer('Largest size of a number.', 4, 20, 9),
	form: word('How the expression is built.', ['any', 'product-last', 'product-first', 'parentheses', 'quotient']),
	answeredBy,
};

/** A product or quotient within a sum or difference. */
export const mixedOperations = defineFamily({
	id: 'mixed-operations',
	version: 1,
	name: 'Two operations of different rank',
	sentence: 'Asks for the value of an expression with a product or quotient and a sum or difference.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['sum-rule-in-product', 'any-negative-makes-negative', 'second-minus-lost', 'operation-changed-sign-kept'],
	features: ['sizeBand', 'crossesZero', 'signs', 'subtractsNegative'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [a = 0, b = 0, c = 0] = numbers;
		const form =
			values.form === 'any'
				? draw.random.pick(['product-last', 'product-first', 'parentheses', 'quotient'] as const)
				: values.form;
		const sign = draw.random.pick(['+', '-']);
		const expression = {
			'product-last': `${a} ${sign} ${inner(b)} × ${inner(c)}`,
			'product-first': `${a} × ${inner(b)} ${sign} ${inner(c)}`,
			parentheses: `${a} × (${b} ${sign} ${inner(c)})`,
			quotient: `${a * b} ÷ ${inner(b)} ${sign} ${inner(c)}`,
		}[form];
		const tree = parseExpression(expression);
		const key = evaluate(tree);
		if (Math.abs(key) < 2 || Math.abs(key) > 200 || numbers.some((number) => Math.abs(number) === Math.abs(key))) {
			return undefined;
		}
		return askNumber(draw, values.answeredBy, {
			name: `Two operations: ${expression}`,
			given: 'symbols',
			stem: [paragraph(`What is \`${expression}\`?`)],
			expression,
			key,
			subjects: [subjectOf(tree)],
			points: 1,
			dok: 2,
			alignments,
			tags: ['several-steps', form === 'quotient' ? 'division' : 'multiplication'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest: most }: Values): NumberPlan {
	return {
		slots: [
			{ least, most, sign: 'any' },
			{ least, most, sign: 'any' },
			{ least, most, sign: 'any' },
		],
		rules: [
			differentSizes,
			{ name: 'a number is negative', holds: (numbers) => numbers.some((number) => number < 0) },
			{
				name: 'the last two numbers differ by more than 1',
				holds: ([, b = 0, c = 0]) => Math.abs(b + c) > 1 && Math.abs(b - c) > 1,
			},
		],
	};
}
