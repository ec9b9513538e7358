import { expect, test } from 'vitest';
import { sameAnswer } from '../../../../item-bank/checks/form/same-answer.ts';
import { asks, foundOn, keyAt } from '../placed.ts';

test('one answer right after the other is pointed at, whatever the kind', () => {
	expect(foundOn(sameAnswer, [asks('3 - 8'), asks('4 + 4'), keyAt(3), asks('2 × 4')])).toMatchObject([
		{
			code: 'review-form-same-answer',
			path: '/sections/0/items/3',
			message: expect.stringContaining('positions 2, 3 and 4'),
		},
	]);
});

test('an answer that comes back later, and its opposite, are left alone', () => {
	expect(foundOn(sameAnswer, [asks('3 - 8'), asks('8 - 3'), asks('4 - 9')])).toEqual([]);
});
