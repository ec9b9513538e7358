import { expect, test } from 'vitest';
import { keyPlaces } from '../../../../item-bank/checks/form/key-places.ts';
import { asks, foundOn, keyAt } from '../placed.ts';

const at = (places: string) => [...places].map((place) => keyAt(Number(place)));

test('an option that holds the key far too often is pointed at', () => {
	expect(foundOn(keyPlaces, at('01001020'))).toMatchObject([
		{ code: 'review-form-key-places', path: '/sections', message: expect.stringContaining('option A in 5 of 8') },
	]);
});

test('the key four times in a row at one option is pointed at, gridded items between them or not', () => {
	const items = [...at('0123210'), ...at('22'), asks('3 - 8'), ...at('22'), ...at('0131')];
	expect(foundOn(keyPlaces, items)).toMatchObject([
		{ code: 'review-form-key-in-a-row', message: expect.stringContaining('positions 8, 9, 11 and 12') },
	]);
});

test('keys spread evenly, three in a row, and short forms are left alone', () => {
	expect(foundOn(keyPlaces, at('012301230123'))).toEqual([]);
	expect(foundOn(keyPlaces, at('0001232133'))).toEqual([]);
	expect(foundOn(keyPlaces, at('00'))).toEqual([]);
});
