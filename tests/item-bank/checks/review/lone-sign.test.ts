import { expect, test } from 'vitest';
import { loneSign } from '../../../../item-bank/checks/review/lone-sign.ts';
import { makeChoice, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

const offering = (...values: readonly number[]) => makeChoice({ options: numberOptions(...values) });

test('a key that is the only negative or only positive option is pointed at', () => {
	expect(found(loneSign, offering(-7, 2, 7, 11))).toMatchObject([{ path: '/options/0' }]);
	expect(
		found(
			loneSign,
			makeChoice({ options: numberOptions(-11, -7, 7), rule: { kind: 'same-value', expression: '9 - 2' } }),
		),
	).toMatchObject([{ path: '/options/2' }]);
});

test('a lone wrong sign, two of a sign, and two options are left alone', () => {
	expect(found(loneSign, offering(-11, -7, 7))).toEqual([]);
	expect(found(loneSign, offering(-11, -7, 7, 11))).toEqual([]);
	expect(found(loneSign, offering(-7, 7))).toEqual([]);
});
