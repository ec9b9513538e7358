import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import { sampleItems } from '../qti/sample-form.ts';
import { sampleKinds } from '../qti/sample-kinds.ts';

const alignments = [
	{ framework: 'ccss-m', edition: '2010', code: '7.NS.A.1b', grade: '7', extent: 'partial', primary: true },
] as const;

/** A choice of two, below a table. */
const twoWays: ItemRecord = {
	id: 'mountain-rail-sign',
	version: 1,
	status: 'approved',
	item: {
		kind: 'choice',
		name: 'Mountain rail, higher or lower',
		given: 'table',
		answerIn: 'number',
		stem: [
			{
				kind: 'table',
				caption: 'Stations & heights',
				header: ['Station', 'Height'],
				rows: [
					['Ridge', '`-3`'],
					['Lake', '`-8`'],
				],
			},
			{ kind: 'paragraph', text: 'What is `-3 - (-8)`?' },
		],
		options: [
			{ id: 'a', content: { kind: 'mathematics', math: '5' } },
			{ id: 'b', content: { kind: 'mathematics', math: '-11' } },
		],
		rule: { kind: 'same-value', expression: '-3 - (-8)' },
		points: 1,
		dok: 1,
		alignments,
	},
};

/** An item of every kind, every way it can be asked in a cartridge between them. */
export const cartridgeItems: readonly ItemRecord[] = [...sampleItems, ...sampleKinds, twoWays];

/** The items in order, in two sections. */
export const cartridgeForm: FormRecord = {
	id: 'every-way',
	version: 2,
	form: {
		title: 'Every way',
		gridProfile: 'plain-sign-first',
		sections: [
			{ title: 'Known', items: sampleItems.map(({ id, version }) => ({ item: id, version })) },
			{ title: 'Others', items: [...sampleKinds, twoWays].map(({ id, version }) => ({ item: id, version })) },
		],
	},
};
