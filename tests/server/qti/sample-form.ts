import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';

const ccss = { framework: 'ccss-m', edition: '2010', grade: '7', extent: 'partial', primary: true } as const;
const teks = { framework: 'teks-math', edition: '2012', code: '6.3(D)', grade: '6', extent: 'full' } as const;

/** One item of each kind, between them every part an export can have. */
export const sampleItems: readonly ItemRecord[] = [
	{
		id: 'tide-gauge-drop',
		version: 2,
		status: 'approved',
		item: {
			kind: 'choice',
			name: 'Tide gauge, drop over a night',
			given: 'table',
			answerIn: 'number',
			stem: [
				{ kind: 'paragraph', text: 'The tide gauge reads heights in centimetres.' },
				{
					kind: 'table',
					caption: 'Readings on Tuesday',
					header: ['Time', 'Height'],
					rows: [
						['6 a.m.', '`4`'],
						['noon', '`-7`'],
					],
				},
				{ kind: 'mathematics', math: '-7 - 4 = ?' },
				{ kind: 'paragraph', text: 'What is the change from 6 a.m. to noon?' },
			],
			options: [
				{ id: 'a', content: { kind: 'mathematics', math: '-11' } },
				{ id: 'b', content: { kind: 'text', text: '`-3` centimetres', worth: '-3' } },
				{ id: 'c', content: { kind: 'mathematics', math: '3' } },
				{ id: 'd', content: { kind: 'mathematics', math: '11' } },
			],
			rule: { kind: 'same-value', expression: '-7 - 4' },
			points: 1,
			dok: 2,
			context: { setting: 'tide-gauge', role: 'change' },
			alignments: [{ ...ccss, code: '7.NS.A.1c' }, teks],
		},
	},
	{
		id: 'lift-lines',
		version: 1,
		status: 'approved',
		item: {
			kind: 'multiple-choice',
			name: 'Mine lift on two lines',
			given: 'number-line',
			answerIn: 'number-line',
			stem: [{ kind: 'paragraph', text: 'Which number lines show `-3 + 5`?' }],
			options: [
				{
					id: 'c',
					content: { kind: 'figure', figure: { kind: 'number-line', orientation: 'horizontal', arrows: [-3, 5] } },
				},
				{
					id: 'a',
					content: { kind: 'figure', figure: { kind: 'number-line', orientation: 'horizontal', arrows: [3, -5] } },
				},
				{
					id: 'b',
					content: { kind: 'figure', figure: { kind: 'number-line', orientation: 'vertical', arrows: [-3, 5] } },
				},
			],
			rule: { kind: 'shows', expression: '-3 + 5' },
			points: 2,
			dok: 2,
			alignments: [{ ...ccss, code: '7.NS.A.1b' }],
		},
	},
	{
		id: 'cold-storage-counters',
		version: 1,
		status: 'draft',
		item: {
			kind: 'gridded',
			name: 'Cold storage, counters',
			given: 'counters',
			answerIn: 'number',
			stem: [
				{ kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 8, ringedPairs: 3 } },
				{
					kind: 'paragraph',
					text: 'Each plus counter is `1` degree & each minus counter is `-1` degree. What is `3 + (-8)`?',
				},
			],
			expression: '3 + (-8)',
			grid: 'plain-sign-first',
			unit: 'degrees',
			points: 1,
			dok: 1,
			alignments: [teks],
		},
	},
];

/** The items in two sections; the last one is worth more here than by itself. */
export const sampleForm: FormRecord = {
	id: 'harbour-check',
	version: 3,
	form: {
		title: 'Harbour check',
		gridProfile: 'plain-sign-first',
		sections: [
			{
				title: 'Choose',
				items: [
					{ item: 'tide-gauge-drop', version: 2 },
					{ item: 'lift-lines', version: 1 },
				],
			},
			{ title: 'Write', items: [{ item: 'cold-storage-counters', version: 1, points: 3 }] },
		],
	},
};
