import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { type Situation, titleOf } from '../stories/situation.ts';
import { settingAsked, situationsIn } from '../stories/situations.ts';
import { levelSlot, moveSlot, staysWithin } from '../stories/story-plan.ts';
import { tell, tellAmount, tellLevel, tellMoves } from '../stories/telling.ts';
import { paragraph } from '../writing.ts';

const alignments = alignTo('6.3(D)', '6.NS.C.5', '7.NS.A.1b', '7.3(B)', '6.CE.2.d');
const parameters = {
	setting: settingAsked,
	largest: integer('Largest size of a number.', 10, 300, 300),
};

/** An expression for a situation, its value, and what the sign of the value means. */
export const explainSituation = defineFamily({
	id: 'explain-situation',
	version: 1,
	name: 'Explain what the sign means',
	sentence: 'Tells a level and one change and asks for an expression, its value and what its sign means.',
	parameters,
	standards: alignments,
	given: ['story'],
	kinds: ['explanation'],
	dok: [3],
	targets: ['signs-dropped', 'leading-minus-parked'],
	features: ['reading'],
	plans: (values) => situationsOf(values).map((situation) => planFor(values, situation)),
	make: ({ random }, values) => {
		const situation = random.pick(situationsOf(values));
		const numbers = drawNumbers(random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const [level = 0, move = 0] = numbers;
		const expression = move < 0 ? `${level} - ${-move}` : `${level} + ${move}`;
		const value = level + move;
		const sign = value < 0 ? 'negative' : 'positive';
		const story = tell(
			situation.opening,
			tellLevel(situation.at, situation, level),
			tellMoves(situation, [move], false),
		);
		const meaning = tellAmount(situation.means[sign], situation, Math.abs(value));
		return {
			kind: 'explanation',
			name: `Explain the sign, ${titleOf(situation)}: ${expression}`,
			given: 'story',
			answerIn: 'words',
			stem: [
				paragraph(story),
				paragraph(
					'Write an expression for this situation and find its value. Then explain what the sign of the value means here.',
				),
			],
			lines: 6,
			rubric: [
				{
					points: 2,
					descriptor: `Writes \`${expression}\` or an expression of equal value, gives \`${value}\` and says what its ${sign} sign means in the situation.`,
					sample: `\`${expression} = ${value}\`. The value is ${sign}, so in the end ${meaning}.`,
				},
				{
					points: 1,
					descriptor: `Gives a fitting expression with the value \`${value}\` but not the meaning of its sign, or the meaning with a slip in the value.`,
					sample: `\`${expression} = ${value}\`.`,
				},
				{
					points: 0,
					descriptor: 'Gives neither a fitting expression nor the meaning of the sign.',
					sample: `\`${Math.abs(level)} + ${Math.abs(move)}\``,
				},
			],
			points: 2,
			dok: 3,
			context: { setting: situation.setting, role: 'position' },
			alignments,
			tags: ['explanation', move < 0 ? 'subtraction' : 'addition'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

/** Situations in which zero and the sides of it are told. */
function situationsOf({ setting }: Values): readonly Situation[] {
	return situationsIn(setting).filter(({ levels }) => levels.highest > 0);
}

function planFor({ largest }: Values, situation: Situation): NumberPlan {
	return {
		slots: [levelSlot(situation, largest), moveSlot(situation, largest)],
		rules: [
			differentSizes,
			{ name: 'the level passes zero', holds: ([level = 0, move = 0]) => level * (level + move) < 0 },
			staysWithin(situation, runningTotals),
			tellingAnswer(([level = 0, move = 0]) => level + move),
		],
	};
}
