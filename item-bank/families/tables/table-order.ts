import { parseMathematics } from '../../expression/parse.ts';
import type { Item } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { runningTotals } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { type Face, letter, placeKey } from '../options.ts';
import { integer, type ValuesOf, word } from '../parameters.ts';
import { tagStatement } from '../pattern-tags.ts';
import type { Situation } from '../stories/situation.ts';
import { settingAsked, situationsIn } from '../stories/situations.ts';
import { tell } from '../stories/telling.ts';
import { paragraph } from '../writing.ts';
import { levelSlots, levelsWithin, levelTable, ofLevels } from './table-words.ts';

const alignments = alignTo('6.2(D)', '6.NS.C.7b', '6.NS.C.7a');
const parameters = {
	setting: settingAsked,
	largest: integer('Largest size of a level.', 10, 300, 300),
	answeredBy: word('How the answer is given.', ['any', 'order', 'choice']),
};

/** Levels of a table put in order, or the right order chosen. */
export const tableOrder = defineFamily({
	id: 'table-order',
	version: 1,
	name: 'Table: levels in order',
	sentence: 'Shows four levels in a table and asks for their order from the least to the greatest.',
	parameters,
	standards: alignments,
	given: ['table'],
	kinds: ['order', 'choice'],
	dok: [2],
	targets: ['order-by-size'],
	features: ['sizeBand', 'signs', 'terms', 'reading'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation)),
	make: (draw, values) => {
		const situation = draw.random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(draw.random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const levels = runningTotals(numbers);
		const { table, opening, setting } = situation;
		const by = values.answeredBy === 'any' ? (draw.lot % 2 === 0 ? 'order' : 'choice') : values.answeredBy;
		const shared = {
			name: `Order in a table, ${situation.id}: ${levels.join(', ')}`,
			given: 'table',
			answerIn: 'words',
			points: 1,
			dok: 2,
			context: { setting, role: 'comparison' },
			alignments,
			tags: ['order'],
		} as const;
		const stem = [paragraph(tell(opening, table.caption)), levelTable(situation, levels)];
		if (by === 'order') {
			const entries = levels.map((level, at): Face => {
				return { content: { kind: 'text', text: table.moments[at] ?? '', worth: String(level) } };
			});
			return {
				kind: 'order',
				...shared,
				stem: [...stem, paragraph(table.askOrder)],
				entries: letter(entries),
				direction: 'ascending',
			} satisfies Item;
		}
		const list = (order: readonly number[]): Face => listFace(situation, levels, order);
		const rising = [...levels].sort((a, b) => a - b);
		const bySize = [...levels].sort((a, b) => Math.abs(a) - Math.abs(b));
		const negativesBySize = [
			...levels.filter((level) => level < 0).sort((a, b) => b - a),
			...levels.filter((level) => level > 0).sort((a, b) => a - b),
		];
		if (bySize.join() === negativesBySize.join()) return undefined;
		const wrong = [bySize, negativesBySize].map(list);
		if (wrong.some(({ patterns = [] }) => patterns.length === 0)) return undefined;
		const ask = table.askOrder.replace('Put the', 'Which list puts the').replace('.', '?');
		return {
			kind: 'choice',
			...shared,
			stem: [...stem, paragraph(ask)],
			options: placeKey(draw, { content: list(rising).content }, wrong),
			rule: { kind: 'true-statement' },
		} satisfies Item;
	},
});

type Values = ValuesOf<typeof parameters>;

/** Moments in an order, and the statement that they stand in it. */
function listFace({ table }: Situation, levels: readonly number[], order: readonly number[]): Face {
	const worth = order.join(' < ');
	const statement = parseMathematics(worth);
	const text = order.map((level) => table.moments[levels.indexOf(level)] ?? '').join(', ');
	return {
		content: { kind: 'text', text, worth },
		patterns: statement.kind === 'statement' ? tagStatement(statement) : [],
	};
}

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
