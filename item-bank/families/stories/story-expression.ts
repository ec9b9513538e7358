import { parseExpression } from '../../expression/parse.ts';
import { subjectOf } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { pickWrong, written, writtenCandidates } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { placeKey } from '../options.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { createTagger } from '../pattern-tags.ts';
import { inner, paragraph } from '../writing.ts';
import { type Situation, titleOf } from './situation.ts';
import { settingAsked, situationsIn } from './situations.ts';
import { levelSlot, moveSlot, staysWithin } from './story-plan.ts';
import { tell, tellLevel, tellMoves } from './telling.ts';

const alignments = alignTo('6.3(D)', '6.NS.C.5', '7.NS.A.1b', '7.3(B)', '6.CE.2.d');
const parameters = {
	setting: settingAsked,
	largest: integer('Largest size of a number.', 10, 300, 300),
};

/** The expression that goes with a story. */
export const storyExpression = defineFamily({
	id: 'story-expression',
	version: 1,
	name: 'Story: matching expression',
	sentence: 'Tells a level and one change and asks which expression gives the level after it.',
	parameters,
	standards: alignments,
	given: ['story'],
	kinds: ['choice'],
	dok: [2],
	targets: ['signs-dropped', 'leading-minus-parked', 'sizes-subtracted-first-sign-kept', 'operation-changed-sign-kept'],
	features: ['sizeBand', 'crossesZero', 'signs', 'reading'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation)),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(draw.random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const [level = 0, move = 0] = numbers;
		const key = `${level} + ${inner(move)}`;
		const others = [`${level} + ${inner(-move)}`, `${-level} + ${inner(move)}`, `${-level} + ${inner(-move)}`];
		const tagger = createTagger([subjectOf(parseExpression(key))], level + move, false);
		const wrong = pickWrong(draw.random, writtenCandidates(others), tagger, 3, written);
		if (wrong === undefined) return undefined;
		const story = tell(
			situation.opening,
			tellLevel(situation.at, situation, level),
			tellMoves(situation, [move], false),
			situation.askLevel,
			'Choose the expression that gives the answer.',
		);
		return {
			kind: 'choice',
			name: `Expression, ${titleOf(situation)}: ${key}`,
			given: 'story',
			answerIn: 'expression',
			stem: [paragraph(story)],
			options: placeKey(draw, { content: written(key) }, wrong),
			rule: { kind: 'same-value', expression: key },
			points: 1,
			dok: 2,
			context: { setting: situation.setting, role: 'position' },
			alignments,
			tags: ['addition'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ largest }: Values, situation: Situation): NumberPlan {
	return {
		slots: [{ ...levelSlot(situation, largest), sign: 'minus' }, moveSlot(situation, largest)],
		rules: [
			differentSizes,
			staysWithin(situation, runningTotals),
			tellingAnswer(([level = 0, move = 0]) => level + move),
		],
	};
}
