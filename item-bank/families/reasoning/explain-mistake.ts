import { patterns } from '../../patterns/index.ts';
import { findWrongAnswer } from '../../patterns/pattern.ts';
import { twoNumbers } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { inner, paragraph, writeOperation } from '../writing.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1c', '7.3(A)', '6.1(G)');
const parameters = {
	least: integer('Smallest size of a number.', 1, 40, 2),
	largest: integer('Largest size of a number.', 4, 50, 15),
};
/** Wrong ideas about a difference that an explanation can put right. */
const explained = ['second-minus-lost', 'subtraction-reversed', 'larger-minus-smaller', 'two-minuses-make-plus'];

/** What is wrong with the difference a student found. */
export const explainMistake = defineFamily({
	id: 'explain-mistake',
	version: 1,
	name: 'Explain a mistake',
	sentence: 'Shows a difference with a wrong value and asks what is wrong and why.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['explanation'],
	dok: [3],
	targets: ['second-minus-lost', 'subtraction-reversed', 'larger-minus-smaller', 'two-minuses-make-plus'],
	features: [],
	plans: (values) => [planFor(values)],
	make: ({ random }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [left = 0, right = 0] = numbers;
		const expression = writeOperation('subtract', left, right);
		const value = left - right;
		const answers = patterns
			.filter(({ id }) => explained.includes(id))
			.map((pattern) => findWrongAnswer(pattern, twoNumbers('subtract', left, right)));
		const wrong = [...new Set(answers.filter((answer) => typeof answer === 'number'))];
		if (wrong.length === 0) return undefined;
		const claimed = random.pick(wrong);
		const asSum = `${left} + ${inner(-right)}`;
		return {
			kind: 'explanation',
			name: `Explain the mistake: ${expression} = ${claimed}`,
			given: 'symbols',
			answerIn: 'words',
			stem: [
				paragraph('A student wrote this equation.'),
				{ kind: 'mathematics', math: `${expression} = ${claimed}` },
				paragraph(`Find the right value of \`${expression}\`. Explain how you know that the student made a mistake.`),
			],
			lines: 6,
			rubric: [
				{
					points: 2,
					descriptor: `Gives \`${value}\` and explains it, such as by adding the opposite (\`${asSum}\`), by a number line or by counters.`,
					sample: `The right value is \`${value}\`. Subtracting \`${right}\` is the same as adding \`${-right}\`, so \`${expression} = ${asSum}\`.`,
				},
				{
					points: 1,
					descriptor: `Gives \`${value}\` without a fitting explanation, or explains a right way but does not reach \`${value}\`.`,
					sample: `It is \`${value}\` because the student made a mistake with the signs.`,
				},
				{
					points: 0,
					descriptor: 'Gives neither the right value nor a right way to find it.',
					sample: `The student is right, it is \`${claimed}\`.`,
				},
			],
			points: 2,
			dok: 3,
			alignments,
			tags: ['subtraction', 'error-analysis', 'explanation'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest: most }: Values): NumberPlan {
	return {
		slots: [
			{ least, most, sign: 'any' },
			{ least, most, sign: 'minus' },
		],
		rules: [differentSizes, tellingAnswer(([a = 0, b = 0]) => a - b)],
	};
}
