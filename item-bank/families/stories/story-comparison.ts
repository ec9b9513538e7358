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

/** How much greater one of two levels is. */
export const storyComparison = defineFamily({
	id: 'story-comparison',
	version: 1,
	name: 'Story: how much more or less',
	sentence: 'Tells two levels and asks how much greater or less one is than the other.',
	parameters,
	standards: alignments,
	given: ['story'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['subtraction-reversed', 'second-minus-lost', 'larger-minus-smaller', 'signs-dropped'],
	features: ['sizeBand', 'crossesZero', 'reading', 'signs'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation)),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(draw.random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const [lower = 0, higher = 0] = numbers;
		const { comparison, opening } = situation;
		const expression = writeOperation('subtract', higher, lower);
		const first = tellLevel(comparison.first, situation, lower);
		const second = tellLevel(comparison.second, situation, higher);
		const ask = draw.lot % 3 === 0 ? comparison.askLess : comparison.askMore;
		return askNumber(draw, values.answeredBy, {
			name: `Comparison, ${titleOf(situation)}: ${expression}`,
			given: 'story',
			stem: [paragraph(tell(opening, first, second, ask))],
			expression,
			key: higher - lower,
			subjects: [twoNumbers('subtract', higher, lower)],
			unit: situation.amountUnit[1],
			points: 1,
			dok: 2,
			context: { setting: situation.setting, role: 'comparison' },
			alignments,
			tags: ['subtraction'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ largest, crossing: asked }: Values, situation: Situation): NumberPlan {
	return {
		slots: [{ ...levelSlot(situation, largest), sign: 'minus' }, levelSlot(situation, largest)],
		rules: [
			differentSizes,
			{ name: 'the second level is greater', holds: ([a = 0, b = 0]) => a < b },
			staysWithin(situation, (levels) => levels),
			tellingAnswer(([a = 0, b = 0]) => b - a),
			...crossing(asked, (levels) => levels),
		],
	};
}
