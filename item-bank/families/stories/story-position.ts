import { twoNumbers } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { crossing, crossings, differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan, type NumberRule } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { paragraph } from '../writing.ts';
import { type Situation, titleOf } from './situation.ts';
import { settingAsked, situationsIn } from './situations.ts';
import { levelSlot, moveSlot, staysWithin } from './story-plan.ts';
import { tell, tellLevel, tellMoves } from './telling.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1b', '7.3(B)', '6.CE.2.d', '6.NS.C.5');
const parameters = {
	setting: settingAsked,
	largest: integer('Largest size of a number.', 10, 300, 300),
	crossing: word('Whether the level passes zero.', crossings),
	answeredBy,
};

/** Where something stands after one change. */
export const storyPosition = defineFamily({
	id: 'story-position',
	version: 1,
	name: 'Story: level after a change',
	sentence: 'Tells a level and one change and asks for the level after it.',
	parameters,
	standards: alignments,
	given: ['story'],
	kinds: ['choice', 'gridded'],
	dok: [1],
	targets: ['leading-minus-parked', 'signs-dropped', 'sizes-subtracted-first-sign-kept', 'wall-at-zero'],
	features: ['sizeBand', 'crossesZero', 'signs', 'reading'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation)),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(draw.random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const [level = 0, move = 0] = numbers;
		const expression = move < 0 ? `${level} - ${-move}` : `${level} + ${move}`;
		const story = tell(
			situation.opening,
			tellLevel(situation.at, situation, level),
			tellMoves(situation, [move], false),
			situation.askLevel,
		);
		return askNumber(draw, values.answeredBy, {
			name: `Level after a change, ${titleOf(situation)}: ${expression}`,
			given: 'story',
			stem: [paragraph(story)],
			expression,
			key: level + move,
			subjects: [move < 0 ? twoNumbers('subtract', level, -move) : twoNumbers('add', level, move)],
			unit: situation.levelUnit,
			points: 1,
			dok: 1,
			context: { setting: situation.setting, role: 'position' },
			alignments,
			tags: [move < 0 ? 'subtraction' : 'addition'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

const hasNegative: NumberRule = {
	name: 'a level is negative',
	holds: ([level = 0, move = 0]) => level < 0 || level + move < 0,
};

function planFor({ largest, crossing: asked }: Values, situation: Situation): NumberPlan {
	return {
		slots: [levelSlot(situation, largest), moveSlot(situation, largest)],
		rules: [
			differentSizes,
			hasNegative,
			staysWithin(situation, runningTotals),
			tellingAnswer(([level = 0, move = 0]) => level + move),
			...crossing(asked, runningTotals),
		],
	};
}
