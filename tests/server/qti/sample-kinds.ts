import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import type { Option } from '../../../item-bank/types.ts';

const alignments = [
	{ framework: 'ccss-m', edition: '2010', code: '7.NS.A.1b', grade: '7', extent: 'partial', primary: true },
] as const;
const common = { given: 'symbols', dok: 2, alignments } as const;
const maths = (id: string, math: string): Option => ({ id, content: { kind: 'mathematics', math } });

/** An item of each kind that the sample form has not, between them every part their export can have. */
export const sampleKinds: readonly ItemRecord[] = [
	{
		id: 'mine-lift-mark',
		version: 1,
		status: 'approved',
		item: {
			...common,
			kind: 'point',
			name: 'Mine lift, mark the level',
			answerIn: 'number-line',
			stem: [
				{ kind: 'paragraph', text: 'The mine lift stands at level `-2` and goes `3` levels down.' },
				{ kind: 'paragraph', text: 'Mark `-2 - 3` on the number line.' },
			],
			line: { kind: 'number-line', orientation: 'vertical', from: -8, to: 4, tickEvery: 1, labels: 'ends-and-zero' },
			expression: '-2 - 3',
			points: 1,
		},
	},
	{
		id: 'tide-order',
		version: 1,
		status: 'approved',
		item: {
			...common,
			kind: 'order',
			name: 'Tide heights in order',
			answerIn: 'expression',
			stem: [{ kind: 'paragraph', text: 'Put these heights in order, lowest first.' }],
			entries: [
				maths('a', '-3 + 5'),
				{ id: 'b', content: { kind: 'text', text: '`-7` & falling', worth: '-7' } },
				maths('c', '|-4|'),
			],
			direction: 'ascending',
			points: 2,
		},
	},
	{
		id: 'line-sums',
		version: 1,
		status: 'approved',
		item: {
			...common,
			kind: 'match',
			name: 'Lines and sums',
			answerIn: 'number-line',
			stem: [{ kind: 'paragraph', text: 'Match each number line with the sum it shows.' }],
			left: [
				{
					id: 'a',
					content: { kind: 'figure', figure: { kind: 'number-line', orientation: 'horizontal', arrows: [-3, 5] } },
				},
				{
					id: 'b',
					content: { kind: 'figure', figure: { kind: 'number-line', orientation: 'horizontal', arrows: [3, -5] } },
				},
			],
			right: [maths('a', '3 + (-5)'), maths('b', '5 + 3'), maths('c', '-3 + 5')],
			partners: 'shows',
			points: 2,
		},
	},
	{
		id: 'equal-values',
		version: 1,
		status: 'approved',
		item: {
			...common,
			kind: 'match',
			name: 'Equal values, credit in parts',
			answerIn: 'number',
			stem: [{ kind: 'paragraph', text: 'Match each expression with its value.' }],
			left: [maths('a', '2 - 5'), maths('b', '-2 × 5'), maths('c', '-2 + 5')],
			right: [maths('a', '3'), maths('b', '-10'), maths('c', '-3'), maths('d', '10')],
			partners: 'same-value',
			credit: 'parts',
			points: 3,
		},
	},
	{
		id: 'cold-storage-compare',
		version: 1,
		status: 'approved',
		item: {
			...common,
			kind: 'inline-choice',
			name: 'Cold storage, which is colder',
			answerIn: 'statement',
			stem: [{ kind: 'paragraph', text: 'Make the statement true.' }],
			statement: '-8 _ -3',
			choices: [
				{ id: 'a', math: '<' },
				{ id: 'b', math: '>' },
				{ id: 'c', math: '=' },
			],
			points: 1,
		},
	},
	{
		id: 'battery-truths',
		version: 1,
		status: 'approved',
		item: {
			...common,
			kind: 'multiple-choice',
			name: 'Battery bench, true statements',
			answerIn: 'statement',
			stem: [{ kind: 'paragraph', text: 'Which are true?' }],
			options: [
				maths('a', '-3 × 4 = -12'),
				maths('b', '-3 - 4 = -7'),
				maths('c', '-3 + 4 = -1'),
				maths('d', '8 ÷ (-2) = -4'),
			],
			rule: { kind: 'true-statement' },
			credit: 'parts',
			points: 3,
		},
	},
	{
		id: 'garden-fund-why',
		version: 1,
		status: 'draft',
		item: {
			...common,
			kind: 'explanation',
			name: 'Garden fund, why the debt shrinks',
			answerIn: 'words',
			stem: [{ kind: 'paragraph', text: 'Explain why `-20 + 5` is greater than `-20`.' }],
			lines: 6,
			rubric: [
				{ points: 2, descriptor: 'Says that adding a positive number moves right.' },
				{ points: 1, descriptor: 'Compares `-15` and `-20` only.' },
				{ points: 0, descriptor: 'Neither.' },
			],
			points: 2,
		},
	},
	{
		id: 'warehouse-set',
		version: 4,
		status: 'approved',
		item: {
			...common,
			kind: 'set',
			name: 'Warehouse temperatures',
			answerIn: 'number',
			stem: [
				{ kind: 'paragraph', text: 'The cold-storage warehouse has three rooms.' },
				{ kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 8 } },
			],
			parts: [
				{
					...common,
					kind: 'gridded',
					name: 'Sum',
					answerIn: 'number',
					stem: [{ kind: 'paragraph', text: 'What do the counters show?' }],
					expression: '3 + (-8)',
					grid: 'plain-sign-first',
					points: 1,
				},
				{
					...common,
					kind: 'point',
					name: 'Marked',
					answerIn: 'number-line',
					stem: [{ kind: 'paragraph', text: 'Mark it on the line.' }],
					line: { kind: 'number-line', orientation: 'horizontal', from: -10, to: 10, tickEvery: 1, labels: 'ends' },
					expression: '3 + (-8)',
					points: 2,
				},
			],
			points: 3,
		},
	},
];

/** The items in two sections; the set is worth more here than by itself. */
export const sampleKindsForm: FormRecord = {
	id: 'every-kind',
	version: 1,
	form: {
		title: 'Every kind',
		gridProfile: 'plain-sign-first',
		sections: [
			{ title: 'By themselves', items: sampleKinds.slice(0, -1).map(({ id, version }) => ({ item: id, version })) },
			{ title: 'Together', items: [{ item: 'warehouse-set', version: 4, points: 5 }] },
		],
	},
};
