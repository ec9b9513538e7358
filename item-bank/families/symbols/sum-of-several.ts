import { subjectOf } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { crossing, crossings, differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, type NumberRule } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { chainTree, type Link, paragraph, writeChain } from '../writing.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1d', '7.3(A)');
const parameters = {
	terms: integer('Numbers in the expression.', 3, 6, 3),
	least: integer('Smallest size of a number.', 1, 90, 2),
	largest: integer('Largest size of a number.', 3, 99, 12),
	crossing: word('Whether the work passes zero on the way.', crossings),
	answeredBy,
};

/** Sums and differences of three to six integers. */
export const sumOfSeveral = defineFamily({
	id: 'sum-of-several',
	version: 1,
	name: 'Several integers added and subtracted',
	sentence: 'Asks for the value of three to six integers added and subtracted from left to right.',
	parameters,
	standards: alignments,
	given: ['symbols'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['detached-minus', 'right-to-left', 'two-minuses-make-plus', 'sizes-added-minus-put'],
	features: ['sizeBand', 'crossesZero', 'signs', 'subtractsNegative', 'terms'],
	plans: (values) => [planFor(values)],
	make: (draw, values) => {
		const terms = drawNumbers(draw.random, planFor(values));
		if (terms === undefined) return undefined;
		const [first = 0, ...rest] = terms;
		const links = rest.map((term): Link => {
			// Half of all terms are written as subtracting their opposite.
			const isSubtracted = draw.random.nextInteger(0, 1) === 1;
			return isSubtracted ? { operator: 'subtract', number: -term } : { operator: 'add', number: term };
		});
		// One minus sign at least stands between two numbers, where it can be detached or read from the right.
		if (!links.some(({ operator }) => operator === 'subtract')) return undefined;
		const expression = writeChain(first, links);
		return askNumber(draw, values.answeredBy, {
			name: `${numberWords[terms.length]} terms: ${expression}`,
			given: 'symbols',
			stem: [paragraph(`What is \`${expression}\`?`)],
			expression,
			key: terms.reduce((sum, term) => sum + term, 0),
			subjects: [subjectOf(chainTree(first, links))],
			points: 1,
			dok: 2,
			alignments,
			tags: ['several-steps', 'addition', 'subtraction'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

const numberWords: Readonly<Record<number, string>> = { 3: 'Three', 4: 'Four', 5: 'Five', 6: 'Six' };

const bothSigns: NumberRule = {
	name: 'some terms are negative and some are positive',
	holds: (terms) => terms.some((term) => term < 0) && terms.some((term) => term > 0),
};

function planFor({ terms, least, largest: most, crossing: asked }: Values): NumberPlan {
	return {
		slots: Array.from({ length: terms }, () => ({ least, most, sign: 'any' as const })),
		rules: [
			differentSizes,
			bothSigns,
			tellingAnswer((numbers) => numbers.reduce((sum, number) => sum + number, 0)),
			...crossing(asked, runningTotals),
		],
	};
}
