import { expect, test } from 'vitest';
import type { Form } from '../../../item-bank/types.ts';
import { compareStates } from '../../../web/forms/form-differences.ts';

function form(sections: readonly (readonly string[])[], more: Partial<Form> = {}): Form {
	return {
		title: 'Unit check',
		gridProfile: 'plain-sign-first',
		sections: sections.map((items, index) => ({
			title: `Section ${index + 1}`,
			items: items.map((item) => ({ item, version: 1 })),
		})),
		...more,
	};
}

test('a form does not differ from itself', () => {
	expect(compareStates(form([['a', 'b'], ['c']]), form([['a', 'b'], ['c']]))).toEqual({
		added: [],
		removed: [],
		moved: [],
		changed: [],
		title: false,
		gridProfile: false,
		sections: false,
	});
});

test('names what only one of two states has', () => {
	const found = compareStates(form([['a', 'b', 'c']]), form([['b', 'c', 'd']]));
	expect(found.added.map(({ item }) => item)).toEqual(['d']);
	expect(found.removed.map(({ item }) => item)).toEqual(['a']);
	expect(found.moved).toEqual([]);
});

test('an item that went from the front to the end is the only one that moved', () => {
	expect(compareStates(form([['a', 'b', 'c', 'd']]), form([['b', 'c', 'd', 'a']])).moved).toEqual(['a']);
});

test('an item in another section moved though its neighbours are the same', () => {
	expect(compareStates(form([['a', 'b'], ['c']]), form([['a'], ['b', 'c']])).moved).toEqual(['b']);
});

test('names items with another version or other points, and what differs around them', () => {
	const first = form([['a', 'b']]);
	const second: Form = {
		title: 'Retake',
		gridProfile: 'floating-sign',
		sections: [
			{
				title: 'Only',
				items: [
					{ item: 'a', version: 2 },
					{ item: 'b', version: 1, points: 2 },
				],
			},
		],
	};
	expect(compareStates(first, second)).toMatchObject({
		changed: ['a', 'b'],
		title: true,
		gridProfile: true,
		sections: true,
	});
});
