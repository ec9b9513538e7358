import { parseExpression } from '../../expression/parse.ts';
import type { Operator } from '../../expression/tree.ts';
import { twoNumbers } from '../../patterns/subject.ts';
import type { CounterGroupsFigure, CountersFigure, Figure } from '../../types.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { drawn, notShowing, pickWrong } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { placeKey } from '../options.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { createTagger } from '../pattern-tags.ts';
import { paragraph, writeOperation } from '../writing.ts';
import { takeAway, worths } from './set-of-counters.ts';

const sums = alignTo('6.3(C)', '7.NS.A.1a', '6.CE.2.a');
const differences = alignTo('6.3(C)', '7.NS.A.1c', '6.CE.2.a');
const products = alignTo('6.3(C)', '7.NS.A.2a', '6.CE.2.a');
const parameters = {
	least: integer('Fewest counters of a sign, or in a group.', 1, 9, 2),
	largest: integer('Most counters of a sign, or in a group.', 3, 10, 8),
	shows: word('What the pictures show.', ['any', 'sum', 'taking-away', 'product']),
};

/** The picture of counters that shows an expression, among pictures of what wrong ideas make of it. */
export const expressionCounters = defineFamily({
	id: 'expression-counters',
	version: 1,
	name: 'Counters for an expression',
	sentence: 'Gives a sum, difference or product and asks which picture of counters shows it.',
	parameters,
	standards: joinAlignments(sums, differences, products),
	given: ['counters'],
	kinds: ['choice'],
	dok: [2],
	targets: ['signs-dropped', 'second-minus-lost', 'subtraction-reversed', 'product-read-as-difference'],
	features: ['crossesZero', 'signs', 'subtractsNegative', 'reading'],
	plans: (values) => waysOf(values).map((way) => planFor(values, way)),
	make: (draw, values) => {
		const way = draw.random.pick(waysOf(values));
		const numbers = drawNumbers(draw.random, planFor(values, way));
		if (numbers === undefined) return undefined;
		const [left = 0, right = 0] = numbers;
		const { operator, alignments, tag } = facts[way];
		const expression = writeOperation(operator, left, right);
		const asked = twoNumbers(operator, left, right);
		const value = operator === 'add' ? left + right : operator === 'subtract' ? left - right : left * right;
		const tagger = createTagger([asked], value, true);
		const [key, ...others] = pictures(way, left, right);
		if (key === undefined) return undefined;
		const wrong = pickWrong(draw.random, notShowing(others, parseExpression(expression)), tagger, 2, drawn);
		if (wrong === undefined) return undefined;
		return {
			kind: 'choice',
			name: `Counters for ${expression}`,
			given: 'counters',
			answerIn: 'counters',
			stem: [
				worths,
				paragraph(
					`${way === 'taking-away' ? 'Crossed-out counters are taken away. ' : ''}Which picture shows \`${expression}\`?`,
				),
			],
			options: placeKey(draw, { content: drawn(key) }, wrong),
			rule: { kind: 'shows', expression },
			points: 1,
			dok: 2,
			alignments,
			tags: [...tag],
		};
	},
});

type Values = ValuesOf<typeof parameters>;
type Way = Exclude<Values['shows'], 'any'>;

const facts: Readonly<
	Record<Way, { readonly operator: Operator; readonly alignments: typeof sums; readonly tag: readonly string[] }>
> = {
	sum: { operator: 'add', alignments: sums, tag: ['addition', 'zero-pairs'] },
	'taking-away': { operator: 'subtract', alignments: differences, tag: ['subtraction', 'negative-minus-negative'] },
	product: { operator: 'multiply', alignments: products, tag: ['multiplication', 'equal-groups'] },
};

function waysOf({ shows }: Values): readonly Way[] {
	return shows === 'any' ? ['sum', 'taking-away', 'product'] : [shows];
}

function planFor({ least, largest }: Values, way: Way): NumberPlan {
	switch (way) {
		case 'sum':
			return {
				slots: signSlots('+-', least, largest),
				rules: [differentSizes, tellingAnswer(([a = 0, b = 0]) => a + b)],
			};
		case 'taking-away':
			return {
				slots: signSlots('--', least, largest),
				rules: [
					differentSizes,
					{ name: 'no zero pairs are needed', holds: ([a = 0, b = 0]) => a < b },
					tellingAnswer(([a = 0, b = 0]) => a - b),
				],
			};
		case 'product':
			return {
				slots: [
					{ least: Math.max(2, least), most: Math.min(5, largest), sign: 'plus' },
					{ least: Math.max(2, least), most: Math.min(6, largest), sign: 'minus' },
				],
				rules: [differentSizes],
			};
		default:
			return way satisfies never;
	}
}

/** The key first, then what wrong ideas draw. */
function pictures(way: Way, left: number, right: number): readonly Figure[] {
	const [a, b] = [Math.abs(left), Math.abs(right)];
	const counters = (plus: number, minus: number): CountersFigure => ({ kind: 'counters', plus, minus });
	switch (way) {
		case 'sum':
			return [counters(a, b), counters(b, a), counters(a + b, 0), counters(0, a + b)];
		case 'taking-away':
			return [takeAway(-a, -b), takeAway(-a, b), takeAway(a, b), takeAway(-b, -a)];
		case 'product': {
			const groups = (sign: 'plus' | 'minus'): CounterGroupsFigure => ({
				kind: 'counter-groups',
				groups: a,
				each: b,
				sign,
			});
			return [groups('minus'), groups('plus'), counters(a, b)];
		}
		default:
			return way satisfies never;
	}
}
