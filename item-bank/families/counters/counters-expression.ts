import { parseExpression } from '../../expression/parse.ts';
import { type Subject, subjectOf } from '../../patterns/subject.ts';
import type { CountersFigure, Item } from '../../types.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { notShown, otherSigns, pickWrong, writeTerms, written, writtenCandidates } from '../faces.ts';
import { type Draw, defineFamily } from '../family.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { placeKey } from '../options.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { createTagger } from '../pattern-tags.ts';
import { writeOperation } from '../writing.ts';
import { countedOf, counterStem, takeAway } from './set-of-counters.ts';

const sums = alignTo('6.3(C)', '7.NS.A.1a', '6.CE.2.a');
const differences = alignTo('6.3(C)', '7.NS.A.1c', '6.CE.2.a');
const parameters = {
	least: integer('Fewest counters of a sign.', 1, 11, 2),
	largest: integer('Most counters of a sign.', 3, 12, 9),
	shows: word('What the counters show.', ['any', 'sum', 'taking-away', 'zero-pairs']),
};

/** The expression that counters show: a sum, something taken away, or taken away after zero pairs were added. */
export const countersExpression = defineFamily({
	id: 'counters-expression',
	version: 1,
	name: 'Expression for counters',
	sentence: 'Shows counters, some of them taken away, and asks which expression they show.',
	parameters,
	standards: joinAlignments(sums, differences),
	given: ['counters'],
	kinds: ['choice'],
	dok: [1, 2],
	targets: ['signs-dropped', 'second-minus-lost', 'subtraction-reversed', 'sizes-subtracted-first-sign-kept'],
	features: ['sizeBand', 'crossesZero', 'signs', 'subtractsNegative', 'reading'],
	plans: (values) => waysOf(values).map((way) => planFor(values, way)),
	make: (draw, values) => {
		const way = draw.random.pick(waysOf(values));
		const numbers = drawNumbers(draw.random, planFor(values, way));
		if (numbers === undefined) return undefined;
		const [first = 0, second = 0] = numbers;
		return way === 'sum' ? askSum(draw, first, second) : askTakingAway(draw, first, second, way);
	},
});

type Values = ValuesOf<typeof parameters>;
type Way = Exclude<Values['shows'], 'any'>;

function waysOf({ shows }: Values): readonly Way[] {
	return shows === 'any' ? ['sum', 'taking-away', 'zero-pairs'] : [shows];
}

function planFor({ least, largest }: Values, way: Way): NumberPlan {
	if (way === 'sum') {
		return {
			slots: signSlots('+-', least, largest),
			rules: [differentSizes, tellingAnswer(([a = 0, b = 0]) => a + b)],
		};
	}
	const needsPairs = ([a = 0, b = 0]: readonly number[]): boolean => a * b < 0 || Math.abs(b) > Math.abs(a);
	const isPaired = way === 'zero-pairs';
	return {
		slots: [
			{ least, most: largest, sign: isPaired ? 'any' : 'minus' },
			{ least, most: Math.min(largest, isPaired ? 7 : largest), sign: isPaired ? 'any' : 'minus' },
		],
		rules: [
			differentSizes,
			tellingAnswer(([a = 0, b = 0]) => a - b),
			{
				name: isPaired ? 'zero pairs are needed' : 'no zero pairs are needed',
				holds: (numbers) => needsPairs(numbers) === isPaired,
			},
		],
	};
}

function askSum(draw: Draw, plus: number, minus: number): Item | undefined {
	const figure: CountersFigure = { kind: 'counters', plus, minus: -minus };
	const texts = otherSigns([plus, minus]).map((terms) => writeTerms(terms, 'adding'));
	return ask(draw, figure, writeTerms([plus, minus], 'adding'), texts, {
		name: `Expression for ${plus} plus and ${-minus} minus counters`,
		stem: counterStem(figure, 'Which expression do the counters show?'),
		dok: 1,
		alignments: sums,
		tags: ['addition', 'zero-pairs'],
	});
}

function askTakingAway(draw: Draw, start: number, taken: number, way: Way): Item | undefined {
	const figure = takeAway(start, taken);
	const texts = [
		...otherSigns([start, taken]).map(([a = 0, b = 0]) => writeOperation('subtract', a, b)),
		writeOperation('subtract', taken, start),
	];
	const word = start < 0 ? 'minus' : 'plus';
	const pairs = way === 'zero-pairs' ? ' Zero pairs were added in the dashed frame.' : '';
	const count = Math.abs(start);
	const opening = pairs === '' ? '' : `The set started with ${count} ${word} counters.${pairs} `;
	const stem = counterStem(
		figure,
		`${opening}The crossed-out counters are taken away. Which expression do the counters show?`,
	);
	return ask(draw, figure, writeOperation('subtract', start, taken), texts, {
		name: `Expression for ${count} ${word} counters with ${Math.abs(taken)} ${taken < 0 ? 'minus' : 'plus'} taken away`,
		stem,
		dok: 2,
		alignments: differences,
		tags: ['subtraction', way === 'zero-pairs' ? 'zero-pairs' : 'negative-minus-negative'],
	});
}

type Facts = Pick<Item, 'name' | 'stem' | 'dok' | 'alignments' | 'tags'>;

function ask(
	draw: Draw,
	figure: CountersFigure,
	key: string,
	texts: readonly string[],
	facts: Facts,
): Item | undefined {
	const asked = subjectOf(parseExpression(key));
	const counted = countedOf(figure);
	const right = counted.plus - counted.minus;
	const subjects: readonly Subject[] = [asked, counted];
	const tagger = createTagger(subjects, right, true);
	const wrong = pickWrong(draw.random, notShown(writtenCandidates(texts), figure), tagger, 3, written);
	if (wrong === undefined) return undefined;
	const options = placeKey(draw, { content: written(key) }, wrong);
	return {
		kind: 'choice',
		given: 'counters',
		answerIn: 'expression',
		...facts,
		options,
		rule: { kind: 'shown' },
		points: 1,
	};
}
