import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareBranches, compareItems, isAlike, takeFields } from '../../../web/item-draft/compare-items.ts';
import { makeChoice, makeGridded, numberOptions } from '../../helpers/items.ts';

describe('two versions of an item', () => {
	test('differ in the fields that say something else, each as lines to read', () => {
		const before = makeChoice();
		const after = makeChoice({ options: numberOptions(-11, -7, 7, 9), dok: 2 });
		const differences = compareItems(before, after);
		expect(differences.map(({ field }) => field).sort()).toEqual(['dok', 'options']);
		expect(differences.find(({ field }) => field === 'options')?.after.at(-1)).toBe('D `9`');
	});

	test('name a field that only one of them has', () => {
		expect(compareItems(makeGridded(), makeGridded({ unit: 'metres' }))).toEqual([
			{ field: 'unit', before: [], after: ['metres'] },
		]);
	});

	test('say who changed what since the version both were made from', () => {
		const base = makeGridded();
		const theirs = makeGridded({ name: 'Theirs', dok: 2 });
		const mine = makeGridded({ name: 'Mine', points: 2 });
		const told = compareBranches(base, theirs, mine).map(({ field, changedBy }) => [field, changedBy]);
		expect(Object.fromEntries(told)).toEqual({ name: 'both', dok: 'theirs', points: 'mine' });
	});

	test('leave every difference to a person where that version is not known', () => {
		const told = compareBranches(undefined, makeGridded({ dok: 2 }), makeGridded());
		expect(told.map(({ changedBy }) => changedBy)).toEqual(['both']);
	});

	test('are alike once all fields of the other are taken', () => {
		const [mine, theirs] = [makeGridded({ unit: 'metres', dok: 3 }), makeGridded({ name: 'Theirs' })];
		const fields = compareItems(theirs, mine).map(({ field }) => field);
		expect(takeFields(mine, theirs, fields)).toEqual(theirs);
		expect(takeFields(mine, theirs, [])).toEqual(mine);
	});
});

test('documents are alike whatever the order of their fields', () => {
	fc.assert(
		fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (document) => {
			expect(isAlike(document, Object.fromEntries(Object.entries(document).reverse()))).toBe(true);
		}),
	);
	expect(isAlike({ a: [1, 2] }, { a: [2, 1] })).toBe(false);
	expect(isAlike([], {})).toBe(false);
});
