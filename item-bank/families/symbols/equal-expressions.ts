import { parseExpression } from '../../expression/parse.ts';
import { subjectOf } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { pickWrong, written, writtenCandidates } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { letter } from '../options.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { createTagger } from '../pattern-tags.ts';
import { inner, paragraph } from '../writing.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1c', '7.NS.A.1d', '7.3(A)');
const parameters = {
	least: integer('Smallest size of a number.', 1, 90, 2),
	largest: integer('Largest size of a number.', 4, 99, 15),
	form: word('How the given expression is written.', ['any', 'sum', 'difference']),
};

/** Several ways to write one sum or difference, to be told from ways that change it. */
export const equalExpressions = defineFamily({
	id: 'equal-expressions',
	version: 1,
	name: 'Expressions of equal value',
	sentence: 'Gives a sum or difference and asks which of four expressions have the same value; two do.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['multiple-choice'],
	dok: [2],
	targets: ['second-minus-lost', 'operation-changed-sign-kept', 'subtraction-reversed', 'signs-dropped'],
	features: ['sizeBand', 'crossesZero', 'signs', 'subtractsNegative'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [a = 0, b = 0] = numbers;
		const isSum = values.form === 'any' ? draw.lot % 2 === 0 : values.form === 'sum';
		const expression = isSum ? `${a} + ${inner(b)}` : `${a} - ${inner(-b)}`;
		const equal = [
			isSum ? `${a} - ${inner(-b)}` : `${a} + ${inner(b)}`,
			`${b} + ${inner(a)}`,
			`${b} - ${inner(-a)}`,
			`-(${-a} - ${inner(b)})`,
		];
		const others = [
			`${a} - ${inner(b)}`,
			`${-a} - ${inner(b)}`,
			`${-a} + ${inner(b)}`,
			`${Math.abs(a)} + ${Math.abs(b)}`,
			`${-b} - ${inner(a)}`,
		].filter((text) => text !== expression);
		const value = a + b;
		const tagger = createTagger([subjectOf(parseExpression(expression))], value, false);
		const wrong = pickWrong(draw.random, writtenCandidates([...new Set(others)]), tagger, 2, written);
		if (wrong === undefined) return undefined;
		const right = draw.random.shuffle(equal).slice(0, 2);
		return {
			kind: 'multiple-choice',
			name: `Expressions equal to ${expression}`,
			given: 'symbols',
			answerIn: 'expression',
			stem: [paragraph(`Which expressions have the same value as \`${expression}\`? Choose all that apply.`)],
			options: letter(draw.random.shuffle([...right.map((text) => ({ content: written(text) })), ...wrong])),
			rule: { kind: 'same-value', expression },
			points: 1,
			dok: 2,
			alignments,
			tags: ['equal-expressions', isSum ? 'addition' : 'subtraction'],
		};
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
			{ name: 'a number is negative', holds: ([a = 0, b = 0]) => a < 0 || b < 0 },
			tellingAnswer(([a = 0, b = 0]) => a + b),
		],
	};
}
