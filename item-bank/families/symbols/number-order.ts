import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { letter, mathematics } from '../options.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { paragraph } from '../writing.ts';

const alignments = alignTo('6.2(D)', '6.2(C)', '6.NS.C.7a');
const parameters = {
	entries: integer('Numbers to put in order.', 3, 6, 5),
	least: integer('Smallest size of a number.', 1, 90, 2),
	largest: integer('Largest size of a number.', 9, 99, 20),
	direction: word('From which end the order runs.', ['any', 'ascending', 'descending']),
	absolute: word('Whether one of them is an absolute value.', ['any', 'yes', 'no']),
};

/** Numbers to be put in order, several of them negative. */
export const numberOrder = defineFamily({
	id: 'number-order',
	version: 1,
	name: 'Put numbers in order',
	sentence: 'Asks to put integers in order, one of them sometimes written as an absolute value.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['order'],
	dok: [2],
	targets: ['order-by-size', 'absolute-value-as-opposite'],
	features: [],
	plans: (values) => [planFor(values)],
	make: ({ random, lot }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const isFalling = values.direction === 'any' ? lot % 2 === 1 : values.direction === 'descending';
		const hasBars = values.absolute === 'any' ? Math.floor(lot / 2) % 2 === 1 : values.absolute === 'yes';
		const shown = random.shuffle(numbers);
		const wanted = [...numbers].sort((a, b) => (isFalling ? b - a : a - b));
		if (shown.every((number, index) => number === wanted[index])) return undefined;
		const barred = hasBars ? shown.find((number) => number > 0) : undefined;
		const write = (number: number): string => (number === barred ? `|${-number}|` : String(number));
		const [from, to] = isFalling ? ['greatest', 'least'] : ['least', 'greatest'];
		return {
			kind: 'order',
			name: `Order from ${from} to ${to}: ${shown.map(write).join(', ')}`,
			given: 'symbols',
			answerIn: 'number',
			stem: [paragraph(`Put the numbers in order from ${from} to ${to}.`)],
			entries: letter(shown.map((number) => ({ content: mathematics(write(number)) }))),
			direction: isFalling ? 'descending' : 'ascending',
			points: 1,
			dok: 2,
			alignments,
			tags: hasBars ? ['order', 'absolute-value'] : ['order'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ entries, least, largest: most }: Values): NumberPlan {
	return {
		slots: Array.from({ length: entries }, (_, at) => {
			return { least, most, sign: at === 0 ? 'plus' : at < 3 ? 'minus' : 'any' } as const;
		}),
		rules: [{ name: 'the numbers differ', holds: (numbers) => new Set(numbers).size === numbers.length }],
	};
}
