import { twoNumbers } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { crossing, crossings, differentSizes, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { paragraph, writeOperation } from '../writing.ts';
import { type Situation, titleOf } from './situation.ts';
import { settingAsked, situationsIn } from './situations.ts';
import { levelSlot, staysWithin } from './story-plan.ts';
import { tell, tellLevel } from './telling.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1c', '7.3(B)', '6.CE.2.d');
const parameters = {
	setting: settingAsked,
	largest: integer('Largest size of a number.', 10, 300, 300),
	crossing: word('Whether the two levels lie on both sides of zero.', crossings),
	answeredBy,
};

/** The change from one level to another. */
export const storyChange = defineFamily({
	id: 'story-change',
	version: 1,
	name: 'Story: change between two levels',
	sentence: 'Tells two levels of one thing and asks for the change from the first to the second.',
	parameters,
	standards: alignments,
	given: ['story'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['subtraction-reversed', 'second-minus-lost', 'signs-dropped', 'operation-changed-sign-kept'],
	features: ['sizeBand', 'crossesZero', 'signs', 'subtractsNegative', 'reading'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation)),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(draw.random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const [before = 0, after = 0] = numbers;
		const { change, opening } = situation;
		const expression = writeOperation('subtract', after, before);
		const [first, second] = [tellLevel(change.first, situation, before), tellLevel(change.second, situation, after)];
		return askNumber(draw, values.answeredBy, {
			name: `Change, ${titleOf(situation)}: ${expression}`,
			given: 'story',
			stem: [paragraph(tell(opening, first, second, change.ask))],
			expression,
			key: after - before,
			subjects: [twoNumbers('subtract', after, before)],
			unit: situation.amountUnit[1],
			points: 1,
			dok: 2,
			context: { setting: situation.setting, role: 'change' },
			alignments,
			tags: ['subtraction'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ largest, crossing: asked }: Values, situation: Situation): NumberPlan {
	const { moves } = situation;
	return {
		slots: [levelSlot(situation, largest), levelSlot(situation, largest)],
		rules: [
			differentSizes,
			{ name: 'a level is negative', holds: (levels) => levels.some((level) => level < 0) },
			staysWithin(situation, (levels) => levels),
			{
				name: `the change is of a size from ${moves.least} to ${moves.most}`,
				holds: ([a = 0, b = 0]) => Math.abs(b - a) >= moves.least && Math.abs(b - a) <= moves.most,
			},
			tellingAnswer(([a = 0, b = 0]) => b - a),
			...crossing(asked, (levels) => levels),
		],
	};
}
