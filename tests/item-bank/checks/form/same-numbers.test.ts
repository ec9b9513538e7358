import { expect, test } from 'vitest';
import { sameNumbers } from '../../../../item-bank/checks/form/same-numbers.ts';
import { asks, foundOn } from '../placed.ts';

test('items about the same numbers are pointed at', () => {
	expect(foundOn(sameNumbers, [asks('3 - 8'), asks('-8 + 4'), asks('-8 × 3')])).toMatchObject([
		{
			code: 'review-form-same-numbers',
			path: '/sections/0/items/2',
			message: expect.stringContaining('3 and 8 at positions 1 and 3'),
		},
	]);
});

test('one number shared, and one calculation asked twice, are left to others', () => {
	expect(foundOn(sameNumbers, [asks('3 - 8'), asks('8 - 4')])).toEqual([]);
	expect(foundOn(sameNumbers, [asks('3 - 8'), asks('3 + (-8)')])).toEqual([]);
});
