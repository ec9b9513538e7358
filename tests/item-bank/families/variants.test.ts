import { describe, expect, test } from 'vitest';
import { families } from '../../../item-bank/families/index.ts';
import { faceOf, makeItem } from '../../../item-bank/families/make-items.ts';
import { shapeKeyOf } from '../../../item-bank/families/shape-key.ts';
import { variantsLike } from '../../../item-bank/families/variants.ts';
import { readDemo } from '../../../server/demo.ts';
import { griddedItem } from '../../helpers/sample-items.ts';

describe('variantsLike', () => {
	test('keeps the shape of a made item, and never gives the item itself or one twice', () => {
		let made = 0;
		const some = families.filter((_family, index) => index % 4 === 1);
		for (const family of some) {
			const item = makeItem(family, 'shape/1');
			if (item === undefined) throw new Error(family.id);
			const { items, reason } = variantsLike(item, 3, 'retake');
			expect(items.length === 3 || reason !== undefined, family.id).toBe(true);
			for (const variant of items) expect(shapeKeyOf(variant)).toEqual(shapeKeyOf(item));
			expect(new Set([item, ...items].map(faceOf)).size).toBe(items.length + 1);
			expect(variantsLike(item, 3, 'retake').items).toEqual(items);
			made += items.length;
		}
		expect(made).toBeGreaterThan(some.length * 2);
	});

	test('finds the family of a hand-written item by its shape', () => {
		const item = griddedItem({ stem: [{ kind: 'paragraph', text: 'What is `-7 + 12`?' }], expression: '-7 + 12' });
		const { family, items } = variantsLike(item, 5, 1);
		expect(family).toBe('sum-of-two');
		for (const variant of items) expect(shapeKeyOf(variant)).toEqual(shapeKeyOf(item));
	});

	test('says what the nearest family differs in where none makes the shape', () => {
		const expression = '((2 + 3) × 4 - 5) × 6 - 7 + 8 - 9';
		const stem = [{ kind: 'paragraph' as const, text: `What is \`${expression}\`?` }];
		const { family, items, reason } = variantsLike(griddedItem({ stem, expression }), 2, 1);
		expect([family, items]).toEqual([undefined, []]);
		expect(reason).toMatch(/the nearest, "[a-z-]+", differs in signs/);
	});

	test('still answers for an item whose family version is gone, from what the item itself shows', () => {
		const [sum] = families;
		const item = sum && makeItem(sum, 'gone/1');
		if (item?.origin === undefined) throw new Error('no item');
		const old = { ...item, origin: { ...item.origin, version: 99 } };
		expect(variantsLike(old, 2, 1).items).toHaveLength(2);
	});

	test('finds variants for a good part of the hand-written demo items or says why not', {
		timeout: 60_000,
	}, () => {
		const items = readDemo()
			.items.map(({ item }) => item)
			.filter(({ origin }) => origin === undefined);
		let found = 0;
		for (const item of items.slice(0, 12)) {
			const begun = performance.now();
			const { items: variants, reason } = variantsLike(item, 1, 1);
			expect(performance.now() - begun).toBeLessThan(10_000);
			if (variants.length > 0) found += 1;
			else expect(reason).toBeDefined();
		}
		expect(found).toBeGreaterThan(4);
	});
});
