import type { Alignment, ChoiceItem, Form, GriddedItem } from '../../item-bank/types.ts';

/** A full primary alignment to a CCSS-M 2010 code. */
export function alignTo(code: string, more: Partial<Alignment> = {}): Alignment {
	return { framework: 'ccss-m', edition: '2010', code, grade: '7', extent: 'partial', primary: true, ...more };
}

/** A gridded item that may be approved as it is. */
export function griddedItem(more: Partial<GriddedItem> = {}): GriddedItem {
	return {
		kind: 'gridded',
		name: 'Tide gauge, two readings',
		given: 'symbols',
		answerIn: 'number',
		stem: [{ kind: 'paragraph', text: 'What is `-3 + (-8)`?' }],
		expression: '-3 + (-8)',
		grid: 'plain-sign-first',
		points: 1,
		dok: 1,
		alignments: [alignTo('7.NS.A.1b')],
		tags: ['same-signs'],
		...more,
	};
}

/** A choice item that may be approved as it is. */
export function choiceItem(more: Partial<ChoiceItem> = {}): ChoiceItem {
	return {
		kind: 'choice',
		name: 'Mine lift goes down',
		given: 'story',
		answerIn: 'number',
		stem: [
			{
				kind: 'paragraph',
				text: 'The mine lift stands 4 metres below the entrance and goes down 9 metres. Where is it now?',
			},
		],
		options: [
			{ id: 'a', content: { kind: 'mathematics', math: '-13' } },
			{ id: 'b', content: { kind: 'mathematics', math: '-5' } },
			{ id: 'c', content: { kind: 'mathematics', math: '5' } },
			{ id: 'd', content: { kind: 'mathematics', math: '13' } },
		],
		rule: { kind: 'same-value', expression: '-4 - 9' },
		points: 1,
		dok: 2,
		context: { setting: 'mine-lift', role: 'position' },
		alignments: [alignTo('7.NS.A.1c')],
		tags: ['below-zero'],
		...more,
	};
}

/** A form of one section that names the items at version 1. */
export function formOf(ids: readonly string[], more: Partial<Form> = {}): Form {
	return {
		title: 'Integers, form A',
		gridProfile: 'plain-sign-first',
		sections: [{ title: 'Part 1', items: ids.map((item) => ({ item, version: 1 })) }],
		...more,
	};
}
