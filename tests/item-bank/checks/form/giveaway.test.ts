import { expect, test } from 'vitest';
import { giveaway } from '../../../../item-bank/checks/form/giveaway.ts';
import { makeGridded, makeSet } from '../../../helpers/items.ts';
import { asks, foundOn } from '../placed.ts';

test('one calculation asked twice is pointed at, in another order too', () => {
	expect(foundOn(giveaway, [asks('-3 - 8'), asks('2 + 5'), asks('-8 + (-3)')])).toMatchObject([
		{
			code: 'review-form-giveaway',
			path: '/sections/0/items/2',
			message: expect.stringContaining('positions 1 and 3'),
		},
	]);
});

test('an equation told in one stem and asked in another is pointed at', () => {
	const told = makeGridded({
		expression: '4 + 4',
		stem: [{ kind: 'paragraph', text: 'As `-3 - 8 = -11`, how much is `4 + 4`?' }],
	});
	expect(foundOn(giveaway, [asks('-3 - 8'), told])).toHaveLength(1);
});

test('parts of a set count with the form, and other calculations are left alone', () => {
	const set = makeSet({ parts: [makeGridded({ expression: '3 - 8' }), makeGridded({ expression: '8 - 3' })] });
	expect(foundOn(giveaway, [set, asks('3 - 8')])).toHaveLength(1);
	expect(foundOn(giveaway, [asks('3 - 8'), asks('8 - 3'), asks('-3 - 8')])).toEqual([]);
});
