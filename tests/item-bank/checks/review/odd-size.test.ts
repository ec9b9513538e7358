import { expect, test } from 'vitest';
import { oddSize } from '../../../../item-bank/checks/review/odd-size.ts';
import { makeChoice, numberOptions } from '../../../helpers/items.ts';
import { found } from '../found.ts';

test('one option of another size is pointed at', () => {
	expect(found(oddSize, makeChoice({ options: numberOptions(-110, -7, 7, 11) }))).toMatchObject([
		{ path: '/options/0' },
	]);
});

test('sizes of one kind are left alone', () => {
	expect(found(oddSize, makeChoice({ options: numberOptions(-60, -7, 7, 11) }))).toEqual([]);
	expect(found(oddSize, makeChoice({ options: numberOptions(-700, -7) }))).toEqual([]);
});
