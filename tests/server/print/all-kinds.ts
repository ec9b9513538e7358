import type { FormRecord, ItemRecord } from '../../../item-bank/items/record.ts';
import type { Item } from '../../../item-bank/types.ts';
import { type PrintedFile, type PrintOptions, printForm } from '../../../server/print/print-form.ts';
import {
	makeChoice,
	makeExplanation,
	makeGridded,
	makeInlineChoice,
	makeMatch,
	makeMultipleChoice,
	makeOrder,
	makePoint,
	makeSet,
} from '../../helpers/items.ts';
import { formWith } from './demo-forms.ts';

const say = (text: string): Item['stem'][number] => ({ kind: 'paragraph', text });

/** One item of each kind, and further ones where a kind can look quite different. */
const made: Readonly<Record<string, Item>> = {
	choice: makeChoice(),
	point: makePoint(),
	'point-upright': makePoint({
		name: 'Mark a tide',
		stem: [
			say('The tide gauge read `-3` metres. Then the water fell by `4` metres. Mark the new reading on the line.'),
		],
		line: {
			kind: 'number-line',
			orientation: 'vertical',
			from: -10,
			to: 10,
			tickEvery: 1,
			labels: [-10, -5, 0, 5, 10],
			points: [{ at: -3, label: 'G' }],
		},
	}),
	'point-arrows': makePoint({
		name: 'Mark the end of two moves',
		stem: [say('The arrow shows the first move of a robot. The second move is `-6`. Mark where the robot ends.')],
		line: { kind: 'number-line', orientation: 'horizontal', from: -12, to: 12, tickEvery: 1, arrows: [5] },
		expression: '5 + (-6)',
	}),
	order: makeOrder(),
	match: makeMatch({ credit: 'parts' }),
	'match-figures': makeMatch({
		name: 'Match counters and sums',
		stem: [say('Each set of counters shows a sum. Match each set with its sum.')],
		left: [
			{ id: 'a', content: { kind: 'figure', figure: { kind: 'counters', plus: 3, minus: 5 } } },
			{ id: 'b', content: { kind: 'figure', figure: { kind: 'counters', plus: 5, minus: 3 } } },
		],
		right: ['5 + (-3)', '3 + (-5)', '3 + 5'].map((math, index) => ({
			id: 'abc'[index] ?? '',
			content: { kind: 'mathematics', math },
		})),
		partners: 'shows',
		points: 2,
	}),
	'inline-choice': makeInlineChoice(),
	'multiple-parts': makeMultipleChoice({
		name: 'True comparisons in parts',
		stem: [say('Which statements are true? Choose all that apply.')],
		credit: 'parts',
		points: 2,
	}),
	gridded: makeGridded(),
	explanation: makeExplanation({
		rubric: [
			{
				points: 2,
				descriptor: 'Says that subtracting `-8` is adding `8`, and why that makes the value greater.',
				sample: 'Taking away `-8` is the same as adding `8`, so `3` becomes `11`.',
			},
			{ points: 1, descriptor: 'Finds `11` without a reason.', sample: 'It is `11`.' },
			{ points: 0, descriptor: 'Neither.' },
		],
	}),
	set: makeSet({
		stem: [
			say('The table shows how far a mine lift moved on four trips. It started at `0` metres.'),
			{
				kind: 'table',
				header: ['Trip', 'Move in metres'],
				rows: [
					['1', '`-9`'],
					['2', '`2`'],
					['3', '`-8`'],
					['4', '`3`'],
				],
			},
		],
		parts: [
			makeChoice({ stem: [say('Where is the lift after trip 2? Find `-9 + 2`.')] }),
			makeGridded({ stem: [say('What is `-3 - (-8)`?')], unit: 'metres' }),
			makePoint({ stem: [say('Mark on the line the value of `-3 + (-4)`.')] }),
			makeExplanation({ lines: 4 }),
		],
		points: 5,
	}),
	'long-explanation': makeExplanation({ name: 'Explain at length', lines: 20 }),
};

/** Items of every kind as the bank keeps them. */
export const kindItems: readonly ItemRecord[] = Object.entries(made).map(([id, item]) => ({
	id: `kind-${id}`,
	version: 1,
	status: 'draft',
	item,
}));

/** A form with an item of every kind. */
export const kindForm: FormRecord = formWith(kindItems, { title: 'Unit check: integers, every kind' });

/** Names of the fields of the form in order: "1" … "12a" … */
export const kindLabels: readonly string[] = kindItems.flatMap(({ item }, index) =>
	item.kind === 'set' ? item.parts.map((_, part) => `${index + 1}${'abcdef'[part]}`) : [String(index + 1)],
);

/** The files of that form by their names. */
export async function printKinds(
	options: PrintOptions,
	students: readonly string[] = [],
): Promise<ReadonlyMap<string, PrintedFile['bytes']>> {
	const files = await printForm({ form: kindForm, items: kindItems, students }, options);
	return new Map(files.map(({ name, bytes }) => [name, bytes]));
}
