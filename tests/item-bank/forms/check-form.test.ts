import { expect, test } from 'vitest';
import { checkForm, maximumOf, positionsOf } from '../../../item-bank/forms/check-form.ts';
import type { Form, Item } from '../../../item-bank/types.ts';
import { makeChoice, makeGridded } from '../../helpers/items.ts';

const items: Record<string, Item> = {
	sum: makeChoice(),
	difference: makeGridded({ points: 2 }),
	wide: makeGridded({ expression: '300 * 30' }),
};
const findItem = (id: string): Item | undefined => items[id];
const form = (...names: readonly string[]): Form => ({
	title: 'Unit check',
	gridProfile: 'plain-sign-first',
	sections: [
		{ title: 'Part 1', items: names.slice(0, 1).map((item) => ({ item, version: 1 })) },
		{ title: 'Part 2', items: names.slice(1).map((item) => ({ item, version: 1, points: 3 })) },
	],
});

test('positions run through the sections', () => {
	expect(
		positionsOf(form('sum', 'difference', 'wide')).map(({ position, entry }) => `${position} ${entry.item}`),
	).toEqual(['1 sum', '2 difference', '3 wide']);
});

test('points of the form stand before points of the item', () => {
	expect(maximumOf(form('difference', 'sum'), findItem)).toBe(2 + 3);
});

test('a sound form has no problems', () => {
	expect(checkForm(form('sum', 'difference'), findItem)).toEqual([]);
});

test('a form is refused for what would not work on the day', () => {
	expect(checkForm({ ...form(), sections: [{ title: 'Part 1', items: [] }] }, findItem)).toMatchObject([
		{ code: 'form-empty' },
	]);
	expect(checkForm(form('sum', 'sum'), findItem)).toMatchObject([
		{ code: 'form-item-repeated', path: '/sections/1/items/0' },
	]);
	expect(checkForm(form('sum', 'gone'), findItem)).toMatchObject([
		{ code: 'form-item-unknown', path: '/sections/1/items/0' },
	]);
	expect(checkForm({ ...form('sum'), gridProfile: 'no-such-grid' }, findItem)).toMatchObject([
		{ code: 'unknown-grid-profile' },
	]);
});

test('a gridded key must fit the grid of the form, whatever grid the item was written for', () => {
	items.wider = makeGridded({ expression: '300 * 300', grid: 'floating-sign' });
	expect(checkForm(form('sum', 'wider'), findItem)).toMatchObject([
		{ code: 'grid-too-narrow', path: '/sections/1/items/0' },
	]);
});
