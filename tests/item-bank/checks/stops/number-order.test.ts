import { expect, test } from 'vitest';
import { numberOrder } from '../../../../item-bank/checks/stops/number-order.ts';
import { makeChoice, makeMultipleChoice, makeOrder, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('numbers that do not increase are refused, where they stop', () => {
	expect(found(numberOrder, makeChoice({ options: numberOptions(-7, -11, 7) }))).toMatchObject([
		{ code: 'option-number-order', path: '/options/1' },
	]);
	const several = makeMultipleChoice({ options: numberOptions(7, -7), rule: { kind: 'same-value', expression: '7' } });
	expect(found(numberOrder, several)).toHaveLength(1);
});

test('negatives count by value, and expressions, statements and entries to be ordered are left alone', () => {
	expect(found(numberOrder, makeChoice({ options: numberOptions(-11, -7, 7) }))).toEqual([]);
	expect(found(numberOrder, makeMultipleChoice())).toEqual([]);
	expect(found(numberOrder, makeOrder())).toEqual([]);
});
