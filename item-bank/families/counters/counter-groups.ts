import { twoNumbers } from '../../patterns/subject.ts';
import type { CounterGroupsFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { notShown, pickWrong, written, writtenCandidates } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { placeKey } from '../options.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { createTagger } from '../pattern-tags.ts';
import { paragraph, writeOperation } from '../writing.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.2a', '6.CE.2.a');
const parameters = {
	least: integer('Fewest groups, and fewest counters in a group.', 1, 9, 2),
	largest: integer('Most groups, and most counters in a group.', 2, 10, 6),
	asks: word('What is asked of the groups.', ['any', 'expression', 'value']),
};

/** Equal groups of minus counters as a product. */
export const counterGroups = defineFamily({
	id: 'counter-groups',
	version: 1,
	name: 'Equal groups of counters as a product',
	sentence: 'Shows equal groups of minus counters and asks for the product they show, or for its value.',
	parameters,
	standards: alignments,
	given: ['counters'],
	kinds: ['choice', 'gridded'],
	dok: [1, 2],
	targets: ['signs-dropped', 'product-read-as-difference'],
	features: [],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [groups = 0, each = 0] = numbers;
		const figure: CounterGroupsFigure = { kind: 'counter-groups', groups, each, sign: 'minus' };
		const expression = writeOperation('multiply', groups, -each);
		const shown = {
			given: 'counters',
			points: 1,
			alignments,
			tags: ['multiplication', 'equal-groups'],
		} as const;
		const opening = [paragraph('Each minus counter is worth `-1`.'), { kind: 'figure', figure }] as const;
		const asks = values.asks === 'any' ? (draw.lot % 2 === 0 ? 'expression' : 'value') : values.asks;
		if (asks === 'value') {
			return {
				kind: 'gridded',
				name: `Value of ${groups} groups of ${each} minus counters`,
				answerIn: 'number',
				stem: [...opening, paragraph('What is the value of all the counters together?')],
				expression,
				grid: 'plain-sign-first',
				dok: 1,
				...shown,
			};
		}
		const tagger = createTagger([twoNumbers('multiply', groups, -each), counted(groups * each)], -groups * each, true);
		const others = [
			writeOperation('multiply', groups, each),
			writeOperation('multiply', -groups, -each),
			writeOperation('add', groups, -each),
			writeOperation('subtract', groups, each),
		];
		const wrong = pickWrong(draw.random, notShown(writtenCandidates(others), figure), tagger, 2, written);
		if (wrong === undefined) return undefined;
		return {
			kind: 'choice',
			name: `Product for ${groups} groups of ${each} minus counters`,
			answerIn: 'expression',
			stem: [...opening, paragraph('Which expression do the groups of counters show?')],
			options: placeKey(draw, { content: written(expression) }, wrong),
			rule: { kind: 'shown' },
			dok: 2,
			...shown,
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function counted(minus: number) {
	return { kind: 'counter-set', plus: 0, minus } as const;
}

function planFor({ least, largest: most }: Values): NumberPlan {
	return {
		slots: [
			{ least: Math.max(2, least), most, sign: 'plus' },
			{ least: Math.max(2, least), most, sign: 'plus' },
		],
		rules: [differentSizes],
	};
}
