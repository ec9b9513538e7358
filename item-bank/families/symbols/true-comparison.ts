import { parseMathematics } from '../../expression/parse.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { mathematics, placeKey } from '../options.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { tagStatement } from '../pattern-tags.ts';
import { paragraph } from '../writing.ts';

const alignments = alignTo('6.2(C)', '6.NS.C.7a');
const parameters = {
	least: integer('Smallest size of a number.', 1, 90, 2),
	largest: integer('Largest size of a number.', 9, 99, 15),
};

/** One true order statement among false ones that look true by size. */
export const trueComparison = defineFamily({
	id: 'true-comparison',
	version: 1,
	name: 'True order statement',
	sentence: 'Asks which of four order statements is true; the others are true of the sizes only.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['choice'],
	dok: [1],
	targets: ['order-by-size'],
	features: ['sizeBand', 'signs'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const isRising = draw.lot % 2 === 0;
		const statements = [0, 2, 4, 6].map((at, index) => {
			const [a = 0, b = 0] = numbers.slice(at, at + 2);
			const [low, high] = [Math.min(a, b), Math.max(a, b)];
			// The key and one more use the same sign, so that the sign is no clue.
			const usesLess = index < 2 ? isRising : !isRising;
			if (index === 0) return usesLess ? `${low} < ${high}` : `${high} > ${low}`;
			return usesLess ? `${high} < ${low}` : `${low} > ${high}`;
		});
		const [key = '', ...others] = statements;
		const wrong = others.map((text) => {
			const statement = parseMathematics(text);
			return { content: mathematics(text), patterns: statement.kind === 'statement' ? tagStatement(statement) : [] };
		});
		if (wrong.some(({ patterns }) => patterns.length === 0)) return undefined;
		return {
			kind: 'choice',
			name: `True order statement, key ${key}`,
			given: 'symbols',
			answerIn: 'statement',
			stem: [paragraph('Which statement is true?')],
			options: placeKey(draw, { content: mathematics(key) }, wrong),
			rule: { kind: 'true-statement' },
			points: 1,
			dok: 1,
			alignments,
			tags: ['order'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest: most }: Values): NumberPlan {
	const isMisleading = (a = 0, b = 0): boolean => a < b === Math.abs(a) > Math.abs(b);
	return {
		slots: Array.from(
			{ length: 8 },
			(_, at) => ({ least, most, sign: at % 2 === 1 && at < 5 ? 'any' : 'minus' }) as const,
		),
		rules: [
			{
				name: 'two numbers of a statement differ in size',
				holds: (numbers) => [0, 2, 4, 6].every((at) => Math.abs(numbers[at] ?? 0) !== Math.abs(numbers[at + 1] ?? 0)),
			},
			{
				name: 'the order by size differs from the order of the numbers',
				holds: (numbers) => [0, 2, 4, 6].every((at) => isMisleading(numbers[at], numbers[at + 1])),
			},
			{
				name: 'no two statements compare the same numbers',
				holds: (numbers) =>
					new Set(
						[0, 2, 4, 6].map(
							(at) =>
								`${Math.min(numbers[at] ?? 0, numbers[at + 1] ?? 0)} ${Math.max(numbers[at] ?? 0, numbers[at + 1] ?? 0)}`,
						),
					).size === 4,
			},
		],
	};
}
