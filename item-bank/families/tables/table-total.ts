import { parseExpression } from '../../expression/parse.ts';
import { subjectOf } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { sumOf, writeTerms } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { type Situation, titleOf } from '../stories/situation.ts';
import { settingAsked, situationsIn } from '../stories/situations.ts';
import { levelSlot, moveSlot, staysWithin } from '../stories/story-plan.ts';
import { tell, tellLevel } from '../stories/telling.ts';
import { paragraph } from '../writing.ts';
import { changeTable } from './table-words.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.3', '7.NS.A.1d', '7.EE.B.3', '7.3(B)');
const parameters = {
	setting: settingAsked,
	changes: integer('Rows of the table.', 2, 5, 3),
	largest: integer('Largest size of a number.', 10, 300, 100),
	answeredBy,
};

/** The level after all the changes of a table. */
export const tableTotal = defineFamily({
	id: 'table-total',
	version: 1,
	name: 'Table: level after several changes',
	sentence: 'Tells a level, shows changes in a table and asks for the level after them.',
	parameters,
	standards: alignments,
	given: ['table'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['sizes-added-minus-put', 'signs-dropped', 'sizes-subtracted-first-sign-kept', 'larger-minus-smaller'],
	features: ['sizeBand', 'crossesZero', 'signs', 'reading', 'terms'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation)),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(draw.random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const [level = 0, ...changes] = numbers;
		const expression = writeTerms(numbers, 'adding');
		const before = tell(
			situation.opening,
			tellLevel(situation.at, situation, level),
			'The table shows the changes after that.',
		);
		return askNumber(draw, values.answeredBy, {
			name: `Table of changes, ${titleOf(situation)}: ${expression}`,
			given: 'table',
			stem: [paragraph(before), changeTable(situation, changes), paragraph(situation.askLevel)],
			expression,
			key: sumOf(numbers),
			subjects: [subjectOf(parseExpression(expression))],
			unit: situation.levelUnit,
			points: 2,
			dok: 2,
			context: { setting: situation.setting, role: 'position' },
			alignments,
			tags: ['several-steps', 'addition'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ largest, changes }: Values, situation: Situation): NumberPlan {
	return {
		slots: [levelSlot(situation, largest), ...Array.from({ length: changes }, () => moveSlot(situation, largest))],
		rules: [
			differentSizes,
			{ name: 'there are gains and losses', holds: ([, ...moves]) => Math.min(...moves) < 0 && Math.max(...moves) > 0 },
			staysWithin(situation, runningTotals),
			{ name: 'a level is negative', holds: (numbers) => runningTotals(numbers).some((level) => level < 0) },
			tellingAnswer(sumOf),
		],
	};
}
