import { twoNumbers } from '../../patterns/subject.ts';
import type { CountersFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { writeOperation } from '../writing.ts';
import { countedOf, counterStem } from './set-of-counters.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1a', '6.CE.2.a');
const parameters = {
	least: integer('Fewest counters of a sign.', 1, 20, 2),
	largest: integer('Most counters of a sign.', 2, 24, 12),
	answer: word('Sign of the value.', ['any', 'negative', 'positive']),
	answeredBy,
};

/** The value of plus and minus counters together. */
export const countersValue = defineFamily({
	id: 'counters-value',
	version: 1,
	name: 'Value of a set of counters',
	sentence: 'Shows plus and minus counters and asks what they are worth together.',
	parameters,
	standards: alignments,
	given: ['counters'],
	kinds: ['choice', 'gridded'],
	dok: [1],
	targets: ['all-counters-counted', 'majority-colour-only', 'larger-minus-smaller', 'signs-dropped'],
	features: ['sizeBand', 'crossesZero'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [plus = 0, minus = 0] = numbers;
		const figure: CountersFigure = { kind: 'counters', plus, minus };
		return askNumber(draw, values.answeredBy, {
			name: `Value of ${plus} plus and ${minus} minus counters`,
			given: 'counters',
			stem: counterStem(figure, 'What is the value of this set of counters?'),
			expression: writeOperation('add', plus, -minus),
			key: plus - minus,
			subjects: [twoNumbers('add', plus, -minus), countedOf(figure)],
			points: 1,
			dok: 1,
			alignments,
			tags: ['addition', 'zero-pairs'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest, answer }: Values): NumberPlan {
	const signed = {
		name: `the value is ${answer}`,
		holds: ([plus = 0, minus = 0]: readonly number[]) => (answer === 'negative') === plus < minus,
	};
	return {
		slots: signSlots('++', least, largest),
		rules: [
			differentSizes,
			tellingAnswer(([plus = 0, minus = 0]) => plus - minus),
			...(answer === 'any' ? [] : [signed]),
		],
	};
}
