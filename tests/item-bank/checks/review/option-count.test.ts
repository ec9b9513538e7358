import { expect, test } from 'vitest';
import { optionCount } from '../../../../item-bank/checks/review/option-count.ts';
import { makeChoice, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('more than five options are pointed at, five are not', () => {
	expect(found(optionCount, makeChoice({ options: numberOptions(-11, -7, -2, 2, 7, 11) }))).toMatchObject([
		{ path: '/options' },
	]);
	expect(found(optionCount, makeChoice({ options: numberOptions(-11, -7, 2, 7, 11) }))).toEqual([]);
});
