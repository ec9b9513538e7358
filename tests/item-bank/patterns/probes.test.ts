import { describe, expect, test } from 'vitest';
import { patterns, sumPatternIds, UnknownPatternError } from '../../../item-bank/patterns/index.ts';
import type { PatternId } from '../../../item-bank/patterns/pattern.ts';
import { findProbes, listPool, listTogether, type Rule } from '../../../item-bank/patterns/probes.ts';
import type { TwoNumbers } from '../../../item-bank/patterns/subject.ts';

const rules: readonly Rule[] = ['right', ...sumPatternIds];
const four: readonly TwoNumbers[] = [
	{ operator: 'add', left: 3, right: -8 },
	{ operator: 'add', left: -3, right: -8 },
	{ operator: 'subtract', left: 3, right: -8 },
	{ operator: 'subtract', left: 3, right: 8 },
];
const pool = [...listPool('add'), ...listPool('subtract')];

describe('the four probes of the fifteen patterns', () => {
	// Source: our own enumeration (trade reference, section 5, "What we computed").
	test('3 + (−8), −3 + (−8), 3 − 8 and 3 − (−8) separate them all and the right rule', () => {
		expect(listTogether(rules, four)).toEqual([]);
	});

	test('none of the four can be left out', () => {
		for (const item of four)
			expect(
				listTogether(
					rules,
					four.filter((other) => other !== item),
				),
			).not.toEqual([]);
	});

	test('no three sums or differences of the pool do it: four pairs of rules need four kinds of item', () => {
		const separating = (...pair: readonly Rule[]) => pool.filter((item) => listTogether(pair, [item]).length === 0);
		const needed = [
			separating('right', 'wall-at-zero'),
			separating('sizes-added-minus-put', 'product-rule-in-sum'),
			separating('right', 'sizes-added-minus-put'),
			separating('right', 'second-minus-lost'),
		];
		for (const items of needed) expect(items.length).toBeGreaterThan(0);
		const all = needed.flat();
		expect(new Set(all).size).toBe(all.length);
	});

	test('the search finds four as well, and knows that fewer do not', () => {
		const found = findProbes(sumPatternIds, 6);
		expect(found.items).toHaveLength(4);
		expect(found.together).toEqual([]);
		expect(found.isSmallest).toBe(true);
	});
});

describe('finding probes', () => {
	test('needs one item for one pattern, with numbers that merge nothing by chance', () => {
		expect(findProbes(['wall-at-zero'], 3)).toEqual({
			items: [{ operator: 'subtract', left: 3, right: 4 }],
			together: [],
			isSmallest: true,
		});
	});

	test('says what too few items leave together', () => {
		const found = findProbes(sumPatternIds, 3);
		expect(found.items).toHaveLength(3);
		expect(found.together.length).toBeGreaterThan(0);
		expect(found.isSmallest).toBe(false);
	});

	test('leaves patterns that no two numbers show with the right rule', () => {
		const found = findProbes(['order-by-size', 'signs-dropped', 'distance-adds-sizes'], 4);
		expect(found.items).toHaveLength(1);
		expect(found.together).toEqual([['right', 'order-by-size', 'distance-adds-sizes']]);
	});

	test('separates all patterns of two numbers, products among them, in the same way each time', () => {
		const ids = patterns.filter(({ slips }) => slips.twoNumbers).map(({ id }) => id);
		const found = findProbes(ids, 8);
		expect(found.together).toEqual([]);
		expect(findProbes(ids, 8)).toEqual(found);
		expect(found.items.length).toBeLessThanOrEqual(8);
	});

	test('agrees with trying every set of one or two items', () => {
		const trials: readonly (readonly PatternId[])[] = [
			['second-minus-lost', 'operation-changed-sign-kept'],
			['signs-dropped', 'larger-minus-smaller', 'subtraction-reversed'],
			['leading-minus-parked', 'sizes-added-minus-put', 'product-rule-in-sum'],
			['start-tick-counted', 'zero-skipped', 'wall-at-zero'],
		];
		const plain = pool.filter(({ left, right }) => Math.abs(left) <= 6 && Math.abs(right) <= 6);
		for (const ids of trials) {
			const all: readonly Rule[] = ['right', ...ids];
			const isEnough = (items: readonly TwoNumbers[]) => listTogether(all, items).length === 0;
			const one = plain.some((item) => isEnough([item]));
			const two = one || plain.some((a) => plain.some((b) => isEnough([a, b])));
			const size = findProbes(ids, 4).items.length;
			if (one) expect(size).toBe(1);
			else if (two) expect(size).toBe(2);
			else expect(size).toBeGreaterThan(2);
		}
	});

	test('finds fewer than taking the most separating item again and again', () => {
		// Taken greedily, four items are needed here; three are enough (our own enumeration).
		const ids: readonly PatternId[] = [
			'second-minus-lost',
			'signs-dropped',
			'operation-changed-sign-kept',
			'wall-at-zero',
			'start-tick-counted',
			'product-rule-in-sum',
			'sizes-subtracted-first-sign-kept',
			'zero-skipped',
			'both-numbers-flipped',
			'leading-minus-parked',
			'direction-by-operation',
		];
		const found = findProbes(ids, 9);
		expect(found.items).toHaveLength(3);
		expect(listTogether(['right', ...ids], found.items)).toEqual([]);
		expect(found.isSmallest).toBe(true);
	});

	test('refuses an id that is none', () => {
		expect(() => findProbes(['no-such-pattern' as PatternId], 2)).toThrow(UnknownPatternError);
	});
});
