import { alignTo } from '../alignments.ts';
import { sumOf, writeTerms } from '../faces.ts';
import { defineFamily } from '../family.ts';
import { differentSizes, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { type Situation, titleOf } from '../stories/situation.ts';
import { settingAsked, situationsIn } from '../stories/situations.ts';
import { moveSlot, staysWithin } from '../stories/story-plan.ts';
import { tell, tellLevel } from '../stories/telling.ts';
import { paragraph } from '../writing.ts';
import { changeTable } from './table-words.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.3', '7.NS.A.1a', '7.EE.B.3', '7.3(B)');
const parameters = {
	setting: settingAsked,
	changes: integer('Rows of the table.', 2, 5, 3),
	largest: integer('Largest size of a change.', 10, 200, 100),
};

/** The change that leads back to zero after the changes of a table. */
export const tableMissingChange = defineFamily({
	id: 'table-missing-change',
	version: 1,
	name: 'Table: change back to zero',
	sentence: 'Shows changes from zero in a table and asks for the change that leads back to zero.',
	parameters,
	standards: alignments,
	given: ['table'],
	kinds: ['gridded'],
	dok: [3],
	targets: ['sign-left-off', 'sizes-added-minus-put', 'signs-dropped'],
	features: ['sizeBand', 'crossesZero', 'signs', 'reading', 'subtractsNegative', 'terms'],
	plans: (values) => situationsOf(values).map((situation) => planFor(values, situation)),
	make: ({ random }, values) => {
		const situation = random.pick(situationsOf(values));
		const changes = drawNumbers(random, planFor(values, situation));
		if (changes === undefined) return undefined;
		const expression = `0 - (${writeTerms(changes, 'adding')})`;
		const before = tell(
			situation.opening,
			tellLevel(situation.at, situation, 0),
			'The table shows the changes after that.',
		);
		return {
			kind: 'gridded',
			name: `Change back to zero, ${titleOf(situation)}: ${expression}`,
			given: 'table',
			answerIn: 'number',
			stem: [paragraph(before), changeTable(situation, changes), paragraph(situation.table.askBack)],
			expression,
			grid: 'plain-sign-first',
			unit: situation.amountUnit[1],
			points: 2,
			dok: 3,
			context: { setting: situation.setting, role: 'change' },
			alignments,
			tags: ['several-steps', 'missing-number'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

/** Situations that can stand at zero. */
function situationsOf({ setting }: Values): readonly Situation[] {
	return situationsIn(setting).filter(({ levels }) => levels.highest > 0);
}

function planFor({ largest, changes }: Values, situation: Situation): NumberPlan {
	return {
		slots: Array.from({ length: changes }, () => moveSlot(situation, largest)),
		rules: [
			differentSizes,
			{ name: 'there are gains and losses', holds: (moves) => Math.min(...moves) < 0 && Math.max(...moves) > 0 },
			staysWithin(situation, runningTotals),
			{ name: 'a level is negative', holds: (moves) => runningTotals(moves).some((level) => level < 0) },
			tellingAnswer(sumOf),
		],
	};
}
