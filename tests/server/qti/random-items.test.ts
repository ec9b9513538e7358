import { expect, test } from 'vitest';
import { findKey } from '../../../item-bank/items/key.ts';
import { itemKinds, randomItems } from './random-items.ts';

test('random items are distinct, each has a key, and every kind, figures and tables come up', () => {
	const items = randomItems(1000, 1);
	expect(items.filter(({ item }) => 'problems' in findKey(item))).toEqual([]);
	expect(new Set(items.map(({ item }) => JSON.stringify(item))).size).toBe(1000);
	expect(new Set(items.map(({ item }) => item.kind))).toEqual(new Set(itemKinds));
	const shows = ['"kind":"shows"', '"kind":"shown"', '"partners":"shows"'];
	for (const part of ['"kind":"figure"', '"kind":"table"', ...shows, '"unit"', '"credit":"parts"', '"vertical"']) {
		expect(items.filter(({ item }) => JSON.stringify(item).includes(part)).length).toBeGreaterThan(20);
	}
});

test('the same seed gives the same items', () => {
	expect(randomItems(50, 7)).toEqual(randomItems(50, 7));
	expect(randomItems(50, 7)).not.toEqual(randomItems(50, 8));
});
