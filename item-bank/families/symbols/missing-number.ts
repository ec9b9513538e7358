import { twoNumbers } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { inner, paragraph } from '../writing.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1c', '7.3(A)', '6.CE.2.b');
const parameters = {
	least: integer('Smallest size of a number.', 1, 90, 2),
	largest: integer('Largest size of a number.', 4, 99, 15),
	operation: word('What is done with the missing number.', ['any', 'added', 'subtracted']),
	place: word('Where the missing number stands.', ['any', 'first', 'second']),
	answeredBy,
};

/** Equations of a sum or a difference with one number missing. */
export const missingNumber = defineFamily({
	id: 'missing-number',
	version: 1,
	name: 'Missing number in a sum or difference',
	sentence: 'Gives a sum or difference with one number missing and asks for it.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['subtraction-reversed', 'second-minus-lost', 'operation-changed-sign-kept', 'signs-dropped'],
	features: ['sizeBand', 'signs', 'subtractsNegative'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [missing = 0, known = 0] = numbers;
		const isAdded = values.operation === 'any' ? draw.lot % 3 !== 0 : values.operation === 'added';
		const isFirst = values.place === 'any' ? Math.floor(draw.lot / 8) % 2 === 0 : values.place === 'first';
		const [left, right] = isFirst ? [missing, known] : [known, missing];
		const result = isAdded ? left + right : left - right;
		const sign = isAdded ? '+' : '-';
		const equation = isFirst ? `? ${sign} ${inner(known)} = ${result}` : `${known} ${sign} ? = ${result}`;
		const inverse = isAdded
			? twoNumbers('subtract', result, known)
			: isFirst
				? twoNumbers('add', result, known)
				: twoNumbers('subtract', known, result);
		if (Math.abs(result) < 2 || Math.abs(result) === Math.abs(known) || Math.abs(result) === Math.abs(missing)) {
			return undefined;
		}
		return askNumber(draw, values.answeredBy, {
			name: `Missing number: ${equation}`,
			given: 'symbols',
			stem: [
				{ kind: 'mathematics', math: equation },
				paragraph('Which number must stand in place of the question mark to make the equation true?'),
			],
			expression: equation,
			key: missing,
			subjects: [inverse],
			points: 1,
			dok: 2,
			alignments,
			tags: ['missing-number', isAdded ? 'addition' : 'subtraction'],
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
			{ name: 'a number is negative', holds: ([missing = 0, known = 0]) => missing < 0 || known < 0 },
			{ name: 'the missing number is no 1 or -1', holds: ([missing = 0]) => Math.abs(missing) > 1 },
		],
	};
}
