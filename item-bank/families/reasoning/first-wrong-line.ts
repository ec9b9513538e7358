import { parseExpression } from '../../expression/parse.ts';
import type { Statement } from '../../expression/tree.ts';
import { patterns } from '../../patterns/index.ts';
import { findWrongAnswer } from '../../patterns/pattern.ts';
import { twoNumbers } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { writeTerms } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, runningTotals } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { type Face, letter } from '../options.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { tagStatement } from '../pattern-tags.ts';
import { paragraph } from '../writing.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1d', '7.3(A)', '6.1(G)');
const parameters = {
	terms: integer('Numbers in the expression.', 3, 5, 4),
	least: integer('Smallest size of a number.', 1, 40, 2),
	largest: integer('Largest size of a number.', 5, 50, 12),
};

/** Worked lines of a sum with one error planted, to be found. */
export const firstWrongLine = defineFamily({
	id: 'first-wrong-line',
	version: 1,
	name: 'Find the first wrong line',
	sentence: 'Shows a worked sum with one planted error and asks for the first wrong line.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['choice'],
	dok: [3],
	targets: ['leading-minus-parked', 'two-minuses-make-plus', 'larger-minus-smaller', 'signs-dropped'],
	features: ['sizeBand', 'crossesZero', 'signs', 'reading', 'terms'],
	plans: (values) => [planFor(values)],
	make: ({ random, turn }, values) => {
		const terms = drawNumbers(random, planFor(values));
		if (terms === undefined) return undefined;
		// Line 1 is the expression; the error stands in one of the lines after it.
		const wrongAt = 1 + (turn % (terms.length - 1));
		const work = plant(terms, wrongAt, (list) => random.pick(list));
		if (work === undefined) return undefined;
		const { lines, values: worths } = work;
		const relation = (worths[wrongAt] ?? 0) > (worths[wrongAt - 1] ?? 0) ? '<' : '>';
		const faces = lines.slice(1).map((line, index): Face => {
			const before = lines[index] ?? '';
			// A line is wrong when its value is no longer that of the line before; only the planted one is.
			const worth = `${before} ${relation} ${line}`;
			const statement: Statement = {
				kind: 'statement',
				sides: [parseExpression(before), parseExpression(line)],
				relations: [relation],
			};
			const content = { kind: 'text', text: `line ${index + 2}`, worth } as const;
			return { content, patterns: index + 1 === wrongAt ? [] : tagStatement(statement) };
		});
		if (faces.some(({ patterns: tags = [] }, index) => tags.length === 0 && index !== wrongAt - 1)) return undefined;
		return {
			kind: 'choice',
			name: `First wrong line: ${lines.join(' | ')}`,
			given: 'symbols',
			answerIn: 'words',
			stem: [
				paragraph(`A student worked \`${lines[0]}\` like this.`),
				{ kind: 'table', header: ['Line', 'Work'], rows: lines.map((line, at) => [String(at + 1), `\`${line}\``]) },
				paragraph('Which is the first line with a mistake?'),
			],
			options: letter(faces),
			rule: { kind: 'true-statement' },
			points: 1,
			dok: 3,
			alignments,
			tags: ['several-steps', 'error-analysis'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

interface Work {
	readonly lines: readonly string[];
	/** What each line is worth. */
	readonly values: readonly number[];
}

/** Works terms two at a time from the left, with a wrong idea followed in one line and everything after it right. */
function plant(terms: readonly number[], wrongAt: number, pick: <T>(list: readonly T[]) => T): Work | undefined {
	const lines = [writeTerms(terms, 'subtracting')];
	const values = [terms.reduce((sum, term) => sum + term, 0)];
	let [first = 0, ...rest] = terms;
	for (let line = 1; line < terms.length; line += 1) {
		const [next = 0, ...after] = rest;
		const right = first + next;
		const wrong = wrongAt === line ? wrongSums(first, next) : [right];
		if (wrong.length === 0) return undefined;
		first = pick(wrong);
		rest = after;
		if (first === 0) return undefined;
		lines.push(writeTerms([first, ...rest], 'subtracting'));
		values.push(first + rest.reduce((sum, term) => sum + term, 0));
	}
	return { lines, values };
}

/** What wrong ideas make of the first two numbers, slips in counting ticks left out. */
function wrongSums(first: number, next: number): readonly number[] {
	const subject = next < 0 ? twoNumbers('subtract', first, -next) : twoNumbers('add', first, next);
	const answers = patterns
		.filter(({ id }) => id !== 'start-tick-counted' && id !== 'zero-skipped')
		.map((pattern) => findWrongAnswer(pattern, subject));
	return [...new Set(answers.filter((answer) => typeof answer === 'number'))];
}

function planFor({ terms, least, largest: most }: Values): NumberPlan {
	return {
		slots: Array.from({ length: terms }, () => ({ least, most, sign: 'any' }) as const),
		rules: [
			differentSizes,
			{
				name: 'two numbers at least are negative, and one is positive',
				holds: (numbers) => numbers.filter((number) => number < 0).length > 1 && Math.max(...numbers) > 0,
			},
			{ name: 'no line comes to zero', holds: (numbers) => !runningTotals(numbers).includes(0) },
		],
	};
}
