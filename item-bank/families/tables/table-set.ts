import { parseMathematics } from '../../expression/parse.ts';
import type { Option, PartItem } from '../../types.ts';
import { alignTo } from '../alignments.ts';
import { defineFamily } from '../family.ts';
import { runningTotals } from '../number-rules.ts';
import { drawNumbers, type NumberPlan } from '../numbers.ts';
import { type Face, letter } from '../options.ts';
import { integer, type ValuesOf } from '../parameters.ts';
import { tagStatement } from '../pattern-tags.ts';
import { type Situation, titleOf } from '../stories/situation.ts';
import { settingAsked, situationsIn } from '../stories/situations.ts';
import { tell } from '../stories/telling.ts';
import { inner, paragraph, writeOperation } from '../writing.ts';
import { inSentence, levelSlots, levelsWithin, levelTable, ofLevels } from './table-words.ts';

const whole = alignTo('6.3(D)', '7.NS.A.3', '7.3(B)', '6.CE.2.d');
const order = alignTo('6.2(D)', '6.NS.C.7b');
const change = alignTo('6.3(D)', '7.NS.A.1c', '7.3(B)', '6.CE.2.d');
const distance = alignTo('6.2(B)', '6.3(D)', '7.NS.A.1c', '6.CE.2.c');
const parameters = {
	setting: settingAsked,
	largest: integer('Largest size of a level.', 10, 300, 300),
};

/** Three questions about one table of levels. */
export const tableSet = defineFamily({
	id: 'table-set',
	version: 1,
	name: 'Set of questions about one table',
	sentence: 'Shows four levels in a table and asks for the least, for a change and for a distance from zero.',
	parameters,
	standards: [...new Map([...whole, ...order, ...change, ...distance].map((one) => [one.code, one])).values()],
	given: ['table'],
	kinds: ['set'],
	dok: [2],
	targets: ['order-by-size', 'subtraction-reversed', 'signs-dropped', 'sign-left-off'],
	features: ['reading'],
	plans: (values) => situationsIn(values.setting).map((situation) => planFor(values, situation)),
	make: ({ random, lot }, values) => {
		const situation = random.pick(situationsIn(values.setting));
		const numbers = drawNumbers(random, planFor(values, situation));
		if (numbers === undefined) return undefined;
		const levels = runningTotals(numbers);
		const least = askLeast(situation, levels);
		if (least === undefined) return undefined;
		const { table, opening, setting } = situation;
		return {
			kind: 'set',
			name: `Table of levels, ${titleOf(situation)}: ${levels.join(', ')}`,
			given: 'table',
			answerIn: 'number',
			stem: [
				paragraph(tell(opening, table.caption, 'Use the table for all questions.')),
				levelTable(situation, levels),
			],
			parts: [least, askChange(situation, levels, lot), askApart(situation, levels)],
			points: 4,
			dok: 2,
			context: { setting, role: 'comparison' },
			alignments: whole,
			tags: ['order', 'subtraction', 'distance'],
		};
	},
});

type Values = ValuesOf<typeof parameters>;

/** Which level is least: an option is true when it is less than all others. */
function askLeast(situation: Situation, levels: readonly number[]): PartItem | undefined {
	const faces = levels.map((level, at): Face => {
		const others = levels.filter((other) => other !== level);
		const worth = `${level} < ${Math.min(...others)}`;
		const statement = parseMathematics(worth);
		return {
			content: { kind: 'text', text: situation.table.moments[at] ?? '', worth },
			patterns: statement.kind === 'statement' ? tagStatement(statement) : [],
		};
	});
	if (faces.filter(({ patterns = [] }) => patterns.length === 0).length > 1) return undefined;
	const options: readonly Option[] = letter(faces);
	return {
		kind: 'choice',
		name: 'Least level',
		given: 'table',
		answerIn: 'words',
		stem: [paragraph(situation.table.askLeast)],
		options,
		rule: { kind: 'true-statement' },
		points: 1,
		dok: 1,
		alignments: order,
	};
}

function askChange({ table, amountUnit }: Situation, levels: readonly number[], lot: number): PartItem {
	const [from, to] = lot % 2 === 0 ? [0, 2] : [1, 3];
	const [start, end] = [table.moments[from] ?? '', table.moments[to] ?? ''].map(inSentence);
	return {
		kind: 'gridded',
		name: 'Change between two levels',
		given: 'table',
		answerIn: 'number',
		stem: [paragraph(`What was the change from ${start} to ${end}, in ${amountUnit[1]}?`)],
		expression: writeOperation('subtract', levels[to] ?? 0, levels[from] ?? 0),
		grid: 'plain-sign-first',
		unit: amountUnit[1],
		points: 2,
		dok: 2,
		alignments: change,
	};
}

function askApart({ amountUnit }: Situation, levels: readonly number[]): PartItem {
	const [least, most] = [Math.min(...levels), Math.max(...levels)];
	return {
		kind: 'gridded',
		name: 'Distance between the least and the greatest level',
		given: 'table',
		answerIn: 'number',
		stem: [paragraph(`How far apart are the least and the greatest number in the table, in ${amountUnit[1]}?`)],
		expression: `|${most} - ${inner(least)}|`,
		grid: 'plain-sign-first',
		unit: amountUnit[1],
		points: 1,
		dok: 2,
		alignments: distance,
	};
}

function planFor({ largest }: Values, situation: Situation): NumberPlan {
	return {
		slots: levelSlots(situation, largest),
		rules: [
			...levelsWithin(situation, largest),
			...[
				{
					name: 'two levels at least are negative',
					holds: (levels: readonly number[]) => levels.filter((level) => level < 0).length > 1,
				},
				{
					name: 'the least level is the largest in size',
					holds: (levels: readonly number[]) => Math.max(...levels.map(Math.abs)) === -Math.min(...levels),
				},
				{
					name: 'changes asked about are no 0, 1 or -1',
					holds: ([a = 0, b = 0, c = 0, d = 0]: readonly number[]) => Math.abs(c - a) > 1 && Math.abs(d - b) > 1,
				},
			].map(ofLevels),
		],
	};
}
