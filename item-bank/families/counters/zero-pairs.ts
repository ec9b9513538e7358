import { twoNumbers } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { writeOperation } from '../writing.ts';
import { countedOf, counterStem, takeAway } from './set-of-counters.ts';

const alignments = alignTo('6.3(C)', '7.NS.A.1c', '6.CE.2.a');
const parameters = {
	least: integer('Smallest size of a number.', 1, 8, 2),
	largest: integer('Largest size of a number.', 2, 9, 7),
	answeredBy,
};
const words = ['Zero', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine'];

/** Differences worked with counters where zero pairs have to be added first. */
export const zeroPairs = defineFamily({
	id: 'zero-pairs',
	version: 1,
	name: 'Zero pairs added to take something away',
	sentence: 'Shows counters with zero pairs added and some taken away, and asks for the difference.',
	parameters,
	standards: alignments,
	given: ['counters'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['second-minus-lost', 'operation-changed-sign-kept', 'all-counters-counted', 'larger-minus-smaller'],
	features: ['crossesZero', 'signs', 'subtractsNegative'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [start = 0, taken = 0] = numbers;
		const figure = takeAway(start, taken);
		const pairs = figure.addedPairs ?? 0;
		const expression = writeOperation('subtract', start, taken);
		const added = pairs === 1 ? 'One zero pair is added' : `${words[pairs]} zero pairs are added`;
		const story =
			`The set starts with ${counters(start)}. ${added} in the dashed frame. ` +
			`Then ${counters(taken)} are taken away to show \`${expression}\`. What is \`${expression}\`?`;
		return askNumber(draw, values.answeredBy, {
			name: `Zero pairs added to find ${expression}`,
			given: 'counters',
			stem: counterStem(figure, story),
			expression,
			key: start - taken,
			subjects: [twoNumbers('subtract', start, taken), countedOf(figure)],
			points: 1,
			dok: 2,
			alignments,
			tags: ['subtraction', 'zero-pairs'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ least, largest: most }: Values): NumberPlan {
	return {
		slots: [
			{ least, most, sign: 'any' },
			{ least, most, sign: 'any' },
		],
		rules: [
			differentSizes,
			tellingAnswer(([a = 0, b = 0]) => a - b),
			{ name: 'zero pairs are needed', holds: ([a = 0, b = 0]) => a * b < 0 || Math.abs(b) > Math.abs(a) },
		],
	};
}

function counters(number: number): string {
	const [count, sign] = [Math.abs(number), number < 0 ? 'minus' : 'plus'];
	return `${count} ${sign} ${count === 1 ? 'counter' : 'counters'}`;
}
