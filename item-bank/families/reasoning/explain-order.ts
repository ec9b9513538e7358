import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { paragraph } from '../writing.ts';

const alignments = alignTo('6.2(C)', '6.NS.C.7a', '6.NS.C.7d', '6.1(G)');
const parameters = {
	least: integer('Smallest size of a number.', 1, 90, 3),
	largest: integer('Largest size of a number.', 4, 99, 20),
};

/** Why the negative number of the larger size is the lesser one. */
export const explainOrder = defineFamily({
	id: 'explain-order',
	version: 1,
	name: 'Explain an order',
	sentence: 'Quotes a student who orders two negative numbers by size, and asks for an explanation.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['explanation'],
	dok: [3],
	targets: ['order-by-size'],
	features: [],
	plans: (values) => [planFor(values)],
	make: ({ random, lot }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [lesser = 0, greater = 0] = numbers;
		const claim =
			lot % 2 === 0
				? `A student says: “\`${lesser}\` is greater than \`${greater}\` because \`${-lesser}\` is greater than \`${-greater}\`.”`
				: `A student says: “\`${greater}\` is less than \`${lesser}\` because \`${-greater}\` is less than \`${-lesser}\`.”`;
		return {
			kind: 'explanation',
			name: `Explain the order of ${lesser} and ${greater}`,
			given: 'symbols',
			answerIn: 'words',
			stem: [
				paragraph(claim),
				paragraph('Is the student right? Explain your answer with a number line or with a situation.'),
			],
			lines: 6,
			rubric: [
				{
					points: 2,
					descriptor: `Says that the student is wrong and that \`${lesser} < ${greater}\`, and explains it by the places of both numbers on a number line or by a fitting situation.`,
					sample: `The student is wrong. On a number line, \`${lesser}\` is farther to the left than \`${greater}\`, so it is less. Only its distance from zero is greater.`,
				},
				{
					points: 1,
					descriptor: `Says that the student is wrong or writes \`${lesser} < ${greater}\`, but the explanation is missing or leaves out one of the numbers.`,
					sample: `No, because \`${lesser}\` is more negative.`,
				},
				{
					points: 0,
					descriptor: 'Agrees with the student, or gives no answer to the question.',
					sample: `Yes, \`${lesser}\` is greater because it is a bigger number.`,
				},
			],
			points: 2,
			dok: 3,
			alignments,
			tags: ['order', 'explanation'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest }: Values): NumberPlan {
	return {
		slots: signSlots('--', least, largest),
		rules: [{ name: 'the first number is the lesser one', holds: ([a = 0, b = 0]) => a < b }],
	};
}
