import { twoNumbers } from '../../patterns/subject.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { answeredBy, askNumber } from '../number-answer.ts';
import { crossing, crossings, runningTotals, tellingAnswer } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { type Situation, titleOf } from '../stories/situation.ts';
import { settingAsked, situationsIn } from '../stories/situations.ts';
import { tell } from '../stories/telling.ts';
import { paragraph, writeOperation } from '../writing.ts';
import { inSentence, levelSlots, levelsWithin, levelTable, ofLevels } from './table-words.ts';

const alignments = alignTo('6.3(D)', '7.NS.A.1c', '7.3(B)', '6.CE.2.d');
const parameters = {
	setting: settingAsked,
	largest: integer('Largest size of a number.', 10, 300, 300),
	crossing: word('Whether the two levels lie on both sides of zero.', crossings),
	answeredBy,
};

/** The change between two levels of a table. */
export const tableChange = defineFamily({
	id: 'table-change',
	version: 1,
	name: 'Table: change between two levels',
	sentence: 'Shows four levels in a table and asks for the change from one to another.',
	parameters,
	standards: alignments,
	given: ['table'],
	kinds: ['choice', 'gridded'],
	dok: [2],
	targets: ['subtraction-reversed', 'second-minus-lost', 'signs-dropped', 'operation-changed-sign-kept'],
	features: ['sizeBand', 'crossesZero', 'signs', 'subtractsNegative', 'reading'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation, [0, 2])),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const places = draw.random.pick(spans);
		const numbers = drawNumbers(draw.random, planFor(values, situation, places));
		if (numbers === undefined) return undefined;
		const levels = runningTotals(numbers);
		const [from, to] = places;
		const [before = 0, after = 0] = [levels[from], levels[to]];
		const { table, amountUnit, opening } = situation;
		const [start, end] = [table.moments[from] ?? '', table.moments[to] ?? ''].map(inSentence);
		const expression = writeOperation('subtract', after, before);
		return askNumber(draw, values.answeredBy, {
			name: `Change in a table, ${titleOf(situation)}: ${expression}`,
			given: 'table',
			stem: [
				paragraph(tell(opening, table.caption)),
				levelTable(situation, levels),
				paragraph(`What was the change from ${start} to ${end}, in ${amountUnit[1]}?`),
			],
			expression,
			key: after - before,
			subjects: [twoNumbers('subtract', after, before)],
			unit: amountUnit[1],
			points: 1,
			dok: 2,
			context: { setting: situation.setting, role: 'change' },
			alignments,
			tags: ['subtraction'],
		});
	},
});

type Values = ValuesOf<typeof parameters>;

/** Rows asked about, by their places. */
const spans = [
	[0, 2],
	[1, 3],
	[0, 3],
	[1, 2],
] as const;

function planFor(
	{ largest, crossing: asked }: Values,
	situation: Situation,
	[from, to]: readonly [number, number],
): NumberPlan {
	const pair = (levels: readonly number[]): readonly number[] => [levels[from] ?? 0, levels[to] ?? 0];
	return {
		slots: levelSlots(situation, largest),
		rules: [
			...levelsWithin(situation, largest),
			...[
				{
					name: 'a level asked about is negative',
					holds: (levels: readonly number[]) => Math.min(...pair(levels)) < 0,
				},
				{
					name: 'two levels at least are negative',
					holds: (levels: readonly number[]) => levels.filter((level) => level < 0).length > 1,
				},
				tellingAnswer((levels: readonly number[]) => (levels[to] ?? 0) - (levels[from] ?? 0)),
				...crossing(asked, pair),
			].map(ofLevels),
		],
	};
}
