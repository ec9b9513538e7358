import { parseMathematics } from '../../expression/parse.ts';
import type { Operator } from '../../expression/tree.ts';
import { patterns } from '../../patterns/index.ts';
import { findWrongAnswer } from '../../patterns/pattern.ts';
import { twoNumbers } from '../../patterns/subject.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { mathematics, placeKey } from '../options.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { tagStatement } from '../pattern-tags.ts';
import { paragraph, writeOperation } from '../writing.ts';

const products = alignTo('6.3(D)', '7.NS.A.2a', '7.NS.A.2b', '7.3(A)', '6.CE.2.b');
const sums = alignTo('6.3(D)', '7.NS.A.1b', '7.NS.A.1c', '7.3(A)', '6.CE.2.b');
const parameters = {
	operations: word('What the equations do.', ['any', 'products', 'sums']),
	least: integer('Smallest size of a number.', 1, 20, 3),
	largest: integer('Largest size of a number.', 4, 30, 12),
};

/** One true equation among false ones that look true to somebody with a wrong idea. */
export const trueEquation = defineFamily({
	id: 'true-equation',
	version: 1,
	name: 'True equation',
	sentence: 'Asks which of four equations of products and quotients, or of sums and differences, is true.',
	parameters,
	standards: joinAlignments(products, sums),
	given: ['symbols'],
	kinds: ['choice'],
	dok: [2],
	targets: ['sum-rule-in-product', 'any-negative-makes-negative', 'signs-dropped', 'two-minuses-make-plus'],
	features: ['sizeBand', 'signs', 'crossesZero', 'subtractsNegative'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const { random } = draw;
		const operations = values.operations === 'any' ? (draw.lot % 2 === 0 ? 'products' : 'sums') : values.operations;
		const operators: readonly Operator[] =
			operations === 'products' ? ['multiply', 'divide', 'multiply', 'divide'] : ['add', 'subtract', 'add', 'subtract'];
		const worked: { readonly text: string; readonly right: number; readonly wrong: readonly number[] }[] = [];
		for (const operator of random.shuffle(operators)) {
			const numbers = drawNumbers(random, planFor(values));
			if (numbers === undefined) return undefined;
			const [a = 0, b = 0] = random.pick(signings)(numbers[0] ?? 0, numbers[1] ?? 0);
			const [left, right] = operator === 'divide' ? [a * b, b] : [a, b];
			const answer = { add: a + b, subtract: a - b, multiply: a * b, divide: a }[operator];
			const wrong = wrongOf(operator, left, right);
			const isTelling =
				Math.abs(answer) > 1 && Math.abs(answer) !== Math.abs(left) && Math.abs(answer) !== Math.abs(right);
			if (!isTelling || wrong.length === 0) return undefined;
			worked.push({ text: writeOperation(operator, left, right), right: answer, wrong });
		}
		const [first, ...rest] = worked;
		if (first === undefined || new Set(worked.map(({ text }) => text)).size < worked.length) return undefined;
		const key = `${first.text} = ${first.right}`;
		const faces = rest.map(({ text, wrong }) => {
			const equation = `${text} = ${random.pick(wrong)}`;
			const statement = parseMathematics(equation);
			return {
				content: mathematics(equation),
				patterns: statement.kind === 'statement' ? tagStatement(statement) : [],
			};
		});
		return {
			kind: 'choice',
			name: `True equation, key ${key}`,
			given: 'symbols',
			answerIn: 'statement',
			stem: [paragraph('Which equation is true?')],
			options: placeKey(draw, { content: mathematics(key) }, faces),
			rule: { kind: 'true-statement' },
			points: 1,
			dok: 2,
			alignments: operations === 'products' ? products : sums,
			tags: operations === 'products' ? ['multiplication', 'division'] : ['addition', 'subtraction'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

const signings: readonly ((a: number, b: number) => readonly number[])[] = [
	(a, b) => [-a, -b],
	(a, b) => [-a, b],
	(a, b) => [a, -b],
];

function wrongOf(operator: Operator, left: number, right: number): readonly number[] {
	const subject = twoNumbers(operator, left, right);
	const answers = patterns
		.filter(({ evidence, id }) => evidence === 'study' || !['start-tick-counted', 'zero-skipped'].includes(id))
		.map((pattern) => findWrongAnswer(pattern, subject));
	return [...new Set(answers.filter((answer) => typeof answer === 'number'))];
}

function planFor({ least, largest }: Values): NumberPlan {
	return { slots: signSlots('++', least, largest), rules: [differentSizes] };
}
