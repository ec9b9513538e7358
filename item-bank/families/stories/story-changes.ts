import { parseExpression } from '../../expression/parse.ts';
import { subjectOf } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { sumOf, writeTerms } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, type NumberRule } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { paragraph } from '../writing.ts';
import { type Situation, titleOf } from './situation.ts';
import { settingAsked, situationsIn } from './situations.ts';
import { levelSlot, moveSlot, staysWithin } from './story-plan.ts';
import { tell, tellLevel, tellMoves } from './telling.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.3', '7.NS.A.1d', '7.EE.B.3', '7.3(B)');
const parameters = {
	setting: settingAsked,
	changes: integer('How many changes are told.', 2, 4, 3),
	largest: integer('Largest size of a number.', 10, 300, 100),
	partialZero: word('Whether changes add up to zero on the way.', ['any', 'yes', 'no']),
	answeredBy,
};

/** Where something stands after several gains and losses. */
export const storyChanges = defineFamily({
	id: 'story-changes',
	version: 1,
	name: 'Story: several gains and losses',
	sentence: 'Tells a level and several gains and losses, some of which may cancel, and asks for the level after them.',
	parameters,
	standards: alignments,
	given: ['story'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['sizes-added-minus-put', 'leading-minus-parked', 'detached-minus', 'signs-dropped'],
	features: ['terms', 'sizeBand', 'crossesZero', 'signs', 'reading'],
	plans: (values) =>
		situationsIn(values.setting).map((situation) => planFor(values, situation, values.partialZero === 'yes')),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const isCancelling = values.partialZero === 'any' ? draw.lot % 3 === 0 : values.partialZero === 'yes';
		const numbers = drawNumbers(draw.random, planFor(values, situation, isCancelling));
		if (numbers === undefined) return undefined;
		const [level = 0, ...drawn] = numbers;
		// The last change takes back what the first one brought, so that a student can see zero in between.
		const moves = isCancelling ? [...drawn.slice(0, -1), -(drawn[0] ?? 0)] : drawn;
		const expression = writeTerms([level, ...moves], 'subtracting');
		const story = tell(
			situation.opening,
			tellLevel(situation.at, situation, level),
			tellMoves(situation, moves, false),
			situation.askLevel,
		);
		return askNumber(draw, values.answeredBy, {
			name: `Several changes, ${titleOf(situation)}: ${expression}`,
			given: 'story',
			stem: [paragraph(story)],
			expression,
			key: sumOf([level, ...moves]),
			subjects: [subjectOf(parseExpression(expression))],
			unit: situation.levelUnit,
			points: 2,
			dok: 2,
			context: { setting: situation.setting, role: 'position' },
			alignments,
			tags: ['several-steps', ...(isCancelling ? ['zero-pairs'] : [])],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ largest, changes }: Values, situation: Situation, isCancelling: boolean): NumberPlan {
	const actual = (numbers: readonly number[]): readonly number[] =>
		isCancelling ? [...numbers.slice(0, -1), -(numbers[1] ?? 0)] : numbers;
	const bothWays: NumberRule = {
		name: 'there are gains and losses',
		holds: (numbers) => {
			const moves = actual(numbers).slice(1);
			return Math.min(...moves) < 0 && Math.max(...moves) > 0;
		},
	};
	return {
		slots: [levelSlot(situation, largest), ...Array.from({ length: changes }, () => moveSlot(situation, largest))],
		rules: [
			...(isCancelling ? [{ name: 'there are three changes at least', holds: () => changes > 2 }] : []),
			differentSizes,
			bothWays,
			staysWithin(situation, (numbers) => runningTotals(actual(numbers))),
			{ name: 'a level is negative', holds: (numbers) => runningTotals(actual(numbers)).some((level) => level < 0) },
			tellingAnswer((numbers) => sumOf(actual(numbers))),
		],
	};
}
