import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { runningTotals } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { type Face, letter } from '../options.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { type Situation, titleOf } from '../stories/situation.ts';
import { settingAsked, situationsIn } from '../stories/situations.ts';
import { tell } from '../stories/telling.ts';
import { paragraph } from '../writing.ts';
import { levelSlots, levelsWithin, levelTable, ofLevels } from './table-words.ts';

const alignments = alignTo('6.2(D)', '6.NS.C.7b', '6.NS.C.7a');
const parameters = {
	setting: settingAsked,
	largest: integer('Largest size of a level.', 10, 300, 300),
};

/** Levels of a table put in order. */
export const tableOrder = defineFamily({
	id: 'table-order',
	version: 1,
	name: 'Table: levels in order',
	sentence: 'Shows four levels in a table and asks for their order from the least to the greatest.',
	parameters,
	standards: alignments,
	given: ['table'],
	kinds: ['order'],
	dok: [2],
	targets: ['order-by-size'],
	features: ['reading'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation)),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(draw.random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const levels = runningTotals(numbers);
		const { table, opening, setting } = situation;
		const entries = levels.map((level, at): Face => {
			return { content: { kind: 'text', text: table.moments[at] ?? '', worth: String(level) } };
		});
		return {
			kind: 'order',
			name: `Order in a table, ${titleOf(situation)}: ${levels.join(', ')}`,
			given: 'table',
			answerIn: 'words',
			stem: [paragraph(tell(opening, table.caption)), levelTable(situation, levels), paragraph(table.askOrder)],
			entries: letter(entries),
			direction: 'ascending',
			points: 1,
			dok: 2,
			context: { setting, role: 'comparison' },
			alignments,
			tags: ['order'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

function planFor({ largest }: Values, situation: Situation): NumberPlan {
	const isRising = (levels: readonly number[]): boolean =>
		levels.every((level, at) => at === 0 || level > (levels[at - 1] ?? 0));
	return {
		slots: levelSlots(situation, largest),
		rules: [
			...levelsWithin(situation, largest),
			...[
				{
					name: 'two levels at least are negative',
					holds: (levels: readonly number[]) => levels.filter((level) => level < 0).length > 1,
				},
				{ name: 'the levels are out of order', holds: (levels: readonly number[]) => !isRising(levels) },
				{
					name: 'the order by size mixes positive and negative levels, or all are negative',
					holds: (levels: readonly number[]) => {
						const positive = levels.filter((level) => level > 0);
						return positive.length === 0 || Math.min(...positive) < Math.max(...levels.map((level) => -level));
					},
				},
			].map(ofLevels),
		],
	};
}
