import { parseMathematics } from '../../expression/parse.ts';
import type { CountersFigure } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, signSlots } from '../numbers.ts';
import { type Face, letter } from '../options.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { tagStatement } from '../pattern-tags.ts';
import { inner } from '../writing.ts';
import { counterStem } from './set-of-counters.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1a', '7.NS.A.1c', '6.CE.2.a');
const parameters = {
	least: integer('Fewest counters of a sign.', 1, 10, 3),
	largest: integer('Most counters of a sign.', 4, 12, 9),
};

/** True and false statements about a set of counters with zero pairs ringed. */
export const countersStatements = defineFamily({
	id: 'counters-statements',
	version: 1,
	name: 'True statements about counters',
	sentence: 'Shows counters with zero pairs ringed and asks which statements about them are true.',
	parameters,
	standards: alignments,
	given: ['counters'],
	kinds: ['multiple-choice'],
	dok: [3],
	targets: ['all-counters-counted', 'majority-colour-only', 'larger-minus-smaller'],
	features: ['sizeBand', 'signs', 'crossesZero', 'terms'],
	plans: (values) => [planFor(values)],
	make: ({ random }, values) => {
		const numbers = drawNumbers(random, planFor(values));
		if (numbers === undefined) return undefined;
		const [plus = 0, minus = 0] = numbers;
		const ringedPairs = random.nextInteger(2, Math.min(plus, minus));
		const figure: CountersFigure = { kind: 'counters', plus, minus, ringedPairs };
		const whole = `${plus} + (${-minus})`;
		const rest =
			plus === ringedPairs
				? String(ringedPairs - minus)
				: minus === ringedPairs
					? String(plus - ringedPairs)
					: `${plus - ringedPairs} + (${ringedPairs - minus})`;
		const value = plus - minus;
		const right: readonly Face[] = [
			say('Taking away the ringed counters keeps the value the same.', `${rest} = ${whole}`),
			say('Taking away one minus counter makes the value greater.', `${plus} + (${1 - minus}) > ${whole}`),
			say('Taking away one plus counter makes the value less.', `${plus - 1} + (${-minus}) < ${whole}`),
		];
		const wrong = random
			.shuffle([plus + minus, value < 0 ? -minus : plus, -value])
			.map((claimed) => say(`The value of the set is \`${claimed}\`.`, `${whole} = ${inner(claimed)}`, figure))
			.filter(({ patterns = [] }) => patterns.length > 0)
			.slice(0, 2);
		if (wrong.length < 2) return undefined;
		const faces = random.shuffle([...random.shuffle(right).slice(0, 2), ...wrong]);
		return {
			kind: 'multiple-choice',
			name: `True statements about ${plus} plus and ${minus} minus counters`,
			given: 'counters',
			answerIn: 'words',
			stem: counterStem(figure, 'Which statements about this set are true? Choose all that apply.'),
			options: letter(faces),
			rule: { kind: 'true-statement' },
			points: 1,
			dok: 3,
			alignments,
			tags: ['zero-pairs'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function say(text: string, worth: string, figure?: CountersFigure): Face {
	const statement = parseMathematics(worth);
	const patterns = figure && statement.kind === 'statement' ? tagStatement(statement, [figure]) : [];
	return { content: { kind: 'text', text, worth }, patterns };
}

function planFor({ least, largest }: Values): NumberPlan {
	return {
		slots: signSlots('++', Math.max(3, least), largest),
		rules: [differentSizes, tellingAnswer(([plus = 0, minus = 0]) => plus - minus)],
	};
}
