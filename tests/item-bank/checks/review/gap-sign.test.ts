import { expect, test } from 'vitest';
import { gapSign } from '../../../../item-bank/checks/review/gap-sign.ts';
import { makeInlineChoice } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const filling = (statement: string, ...math: readonly string[]) =>
	makeInlineChoice({ statement, choices: math.map((text, index) => ({ id: 'abcd'.charAt(index), math: text })) });

test('a choice that doubles signs in the gap is pointed at, and a sign that is chosen too', () => {
	expect(found(gapSign, filling('5 + _ = -3', '8', '-8'))).toMatchObject([
		{ code: 'review-gap-sign', path: '/statement', message: expect.stringContaining('"5 + -8 = -3"') },
	]);
	expect(found(gapSign, filling('5 _ -3 = 2', '+', '-'))).toHaveLength(1);
});

test('parentheses, and a gap after a relation or at the start, are left alone', () => {
	expect(found(gapSign, filling('5 + (_) = -3', '8', '-8'))).toEqual([]);
	expect(found(gapSign, filling('5 + _ = -3', '8', '(-8)'))).toEqual([]);
	expect(found(gapSign, filling('3 × (-6) = _', '18', '-18'))).toEqual([]);
	expect(found(gapSign, filling('_ + 5 = -3', '8', '-8'))).toEqual([]);
	expect(found(gapSign, filling('-8 _ -3', '<', '>'))).toEqual([]);
});

test('a statement that doubles signs by itself is stopped by another rule', () => {
	expect(found(gapSign, filling('3 - -8 _ -5', '<', '>'))).toEqual([]);
});
