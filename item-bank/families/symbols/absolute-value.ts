import { evaluate } from '../../expression/evaluate.ts';
import { parseExpression } from '../../expression/parse.ts';
import type { Subject } from '../../patterns/subject.ts';
import { subjectOf } from '../../patterns/subject.ts';
import { alignTo, joinAlignments } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { inner, paragraph } from '../writing.ts';

const inside = alignTo('6.2(B)', '6.3(D)', '6.NS.C.7c', '6.CE.2.c');
const outside = alignTo('6.2(B)', '6.NS.C.7c', '6.3(D)');
const parameters = {
	least: integer('Smallest size of a number.', 1, 90, 2),
	largest: integer('Largest size of a number.', 4, 99, 15),
	form: word('What stands in bars.', ['any', 'sum', 'difference', 'two-numbers']),
	answeredBy,
};

/** Absolute values of sums and differences, and sums of absolute values. */
export const absoluteValue = defineFamily({
	id: 'absolute-value',
	version: 1,
	name: 'Absolute value',
	sentence: 'Asks for the absolute value of a sum or difference, or for the sum or difference of two absolute values.',
	parameters,
	standards: joinAlignments(inside, outside),
	given: ['symbols'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['absolute-value-as-opposite', 'signs-dropped', 'second-minus-lost', 'distance-adds-sizes'],
	features: ['sizeBand', 'crossesZero', 'signs', 'subtractsNegative'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const numbers = drawNumbers(draw.random, planFor(values));
		if (numbers === undefined) return undefined;
		const [a = 0, b = 0] = numbers;
		const form = values.form === 'any' ? draw.random.pick(['sum', 'difference', 'two-numbers'] as const) : values.form;
		const sign = draw.lot % 2 === 0 ? '+' : '-';
		const expression =
			form === 'sum'
				? `|${a} + ${inner(b)}|`
				: form === 'difference'
					? `|${a} - ${inner(b)}|`
					: `|${a}| ${sign} |${b}|`;
		const tree = parseExpression(expression);
		const key = evaluate(tree);
		if (Math.abs(key) < 2 || Math.abs(key) === Math.abs(a) || Math.abs(key) === Math.abs(b)) return undefined;
		return askNumber(draw, values.answeredBy, {
			name: `Absolute value: ${expression}`,
			given: 'symbols',
			stem: [paragraph(`What is \`${expression}\`?`)],
			expression,
			key,
			subjects: subjectsOf(expression, a, b, form),
			points: 1,
			dok: 2,
			alignments: form === 'two-numbers' ? outside : inside,
			tags: ['absolute-value'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

/** The expression, and for bars around two numbers also what is worked by somebody who leaves the bars out. */
function subjectsOf(expression: string, a: number, b: number, form: string): readonly Subject[] {
	const tree = parseExpression(expression);
	const asked = subjectOf(tree);
	if (form === 'two-numbers' || tree.kind !== 'absolute') return [asked];
	const inner = subjectOf(tree.of);
	return form === 'sum' ? [asked, inner] : [asked, { kind: 'distance', from: a, to: b }, inner];
}

function planFor({ least, largest: most }: Values): NumberPlan {
	return {
		slots: [
			{ least, most, sign: 'any' },
			{ least, most, sign: 'any' },
		],
		rules: [differentSizes, { name: 'a number is negative', holds: ([a = 0, b = 0]) => a < 0 || b < 0 }],
	};
}
