import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hideInRow } from '../../../server/results/hide-in-row.ts';
import { listHidden } from '../../../server/results/option-sections.ts';
import { poolAtCuts, poolCounts } from '../../../server/results/pool-counts.ts';

describe('bars of few students', () => {
	const counts = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 40 });

	test('are joined until each stands for nobody or enough, over the same range and the same students', () => {
		fc.assert(
			fc.property(counts, fc.integer({ min: 1, max: 5 }), (list, least) => {
				const total = list.reduce((sum, each) => sum + each, 0);
				fc.pre(total >= least);
				const pooled = poolCounts(
					list.map((count, score) => ({ from: score, to: score, count })),
					least,
				);
				expect(pooled.every(({ count }) => count === 0 || count >= least)).toBe(true);
				expect(pooled.reduce((sum, { count }) => sum + count, 0)).toBe(total);
				expect([pooled[0]?.from, pooled.at(-1)?.to]).toEqual([0, list.length - 1]);
				for (const [index, bar] of pooled.entries())
					if (index > 0) expect(bar.from).toBe((pooled[index - 1]?.to ?? 0) + 1);
			}),
		);
	});

	test('keep the cuts they can, so that two cuts never tell of fewer between them', () => {
		fc.assert(
			fc.property(counts, fc.uniqueArray(fc.integer({ min: 1, max: 39 }), { maxLength: 4 }), (list, cuts) => {
				fc.pre(list.reduce((sum, each) => sum + each, 0) >= 3);
				const pooled = poolAtCuts(
					list.map((count, score) => ({ from: score, to: score, count })),
					3,
					cuts,
				);
				expect(pooled.every(({ count }) => count === 0 || count >= 3)).toBe(true);
				expect(pooled.reduce((sum, { count }) => sum + count, 0)).toBe(list.reduce((sum, each) => sum + each, 0));
				for (const [index, bar] of pooled.entries())
					expect(bar.from).toBe(index === 0 ? 0 : (pooled[index - 1]?.to ?? 0) + 1);
				// A cut with three students or more on either side of it, up to its neighbours, stays a boundary.
				const [only] = cuts.length === 1 ? cuts : [];
				if (only === undefined || only >= list.length) return;
				const [below, above] = [list.slice(0, only), list.slice(only)].map((half) =>
					half.reduce((sum, each) => sum + each, 0),
				);
				if ((below ?? 0) >= 3 && (above ?? 0) >= 3) expect(pooled.map(({ from }) => from)).toContain(only);
			}),
		);
	});

	test('stay as they are where each has enough', () => {
		const bars = [4, 0, 3, 7].map((count, score) => ({ from: score, to: score, count }));
		expect(poolCounts(bars, 3)).toEqual(bars);
	});
});

describe('small parts of a known sum', () => {
	test('are hidden, and what is left of the sum is nobody, enough, or the whole row', () => {
		fc.assert(
			fc.property(
				fc.array(fc.integer({ min: 0, max: 30 }), { maxLength: 8 }),
				fc.integer({ min: 2, max: 10 }),
				(sizes, least) => {
					const hidden = hideInRow(sizes, least);
					for (const [place, size] of sizes.entries()) if (size > 0 && size < least) expect(hidden).toContain(place);
					const left = sizes.filter((_size, place) => hidden.has(place)).reduce((sum, size) => sum + size, 0);
					const isWhole = sizes.every((size, place) => size === 0 || hidden.has(place));
					expect(hidden.size === 0 || left >= least || isWhole).toBe(true);
					if (sizes.every((size) => size === 0 || size >= least)) expect(hidden.size).toBe(0);
				},
			),
		);
	});
});

describe('options that few students marked', () => {
	const optionsOf = (counts: readonly number[]) =>
		counts.map((count, index) => ({ option: 'abcde'[index] ?? '', isKey: index === 0, count }));

	test('cannot be computed back from the total of what is hidden', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 3, maxLength: 5 }), (counts) => {
				const options = optionsOf(counts);
				const hidden = options.filter(({ option }) => listHidden(options).has(option));
				for (const { count, option } of options)
					if (count > 0 && count < 3) expect(listHidden(options)).toContain(option);
				if (hidden.length === 0 || options.every(({ count }) => count < 3)) return;
				// Every way the hidden ones can add up, each 1 or more: more than one way says nothing for sure.
				const total = hidden.reduce((sum, { count }) => sum + count, 0);
				const ways = (places: number, left: number): number =>
					places === 1
						? 1
						: Array.from({ length: Math.max(0, left - places + 1) }, (_unused, index) =>
								ways(places - 1, left - index - 1),
							).reduce((sum, each) => sum + each, 0);
				expect(ways(hidden.length, total)).toBeGreaterThan(1);
			}),
		);
	});

	test('take a wrong option along before the key', () => {
		expect([...listHidden(optionsOf([4, 1, 9, 20]))]).toEqual(['b', 'c']);
	});
});
