import fc from 'fast-check';
import { expect, test } from 'vitest';
import { InvariantError } from '../../../item-bank/invariant.ts';
import { createRandom, createRandomFrom } from '../../../item-bank/random/random.ts';

const take = (count: number, draw: () => number): readonly number[] => Array.from({ length: count }, draw);

test('draws the numbers of the published generator from its published starting words', () => {
	// Starting words: Marsaglia 2003, "Xorshift RNGs", section 4. First outputs: as commonly listed for xor128, from memory.
	const random = createRandomFrom([123456789, 362436069, 521288629, 88675123]);
	expect(take(4, random.nextWord)).toEqual([3701687786, 458299110, 2500872618, 3633119408]);
});

test('draws the same for the same seed, forever', () => {
	expect(take(3, createRandom('a seed').nextWord)).toEqual(take(3, createRandom('a seed').nextWord));
	expect(take(3, createRandom(7).nextWord)).toEqual(take(3, createRandom('7').nextWord));
	expect(take(3, createRandom('7').nextWord)).toMatchInlineSnapshot(`
		[
		  2992041517,
		  1951118567,
		  250306224,
		]
	`);
});

test('draws differently for neighbouring seeds', () => {
	const firsts = take(2000, () => 0).map((_, seed) => createRandom(seed).nextWord());
	expect(new Set(firsts).size).toBe(firsts.length);
});

test('draws every integer of a range about equally often', () => {
	const random = createRandom('fair');
	const counts = [0, 0, 0, 0, 0, 0];
	for (const drawn of take(60_000, () => random.nextInteger(-2, 3))) counts[drawn + 2] = (counts[drawn + 2] ?? 0) + 1;
	// 10,000 expected of each; the standard deviation is √(60,000 · 1/6 · 5/6) ≈ 91, so 500 is more than five of them.
	for (const count of counts) expect(Math.abs(count - 10_000)).toBeLessThan(500);
});

test('stays in range, picks from the list and shuffles without loss', () => {
	fc.assert(
		fc.property(
			fc.string(),
			fc.integer(),
			fc.nat(),
			fc.array(fc.integer(), { minLength: 1 }),
			(seed, least, more, list) => {
				const random = createRandom(seed);
				const drawn = random.nextInteger(least, least + more);
				expect(drawn >= least && drawn <= least + more).toBe(true);
				expect(list).toContain(random.pick(list));
				const sorted = (numbers: readonly number[]) => [...numbers].sort((a, b) => a - b);
				expect(sorted(random.shuffle(list))).toEqual(sorted(list));
			},
		),
	);
});

test('refuses an empty range, an empty list and a state that never moves', () => {
	expect(() => createRandom(1).nextInteger(3, 2)).toThrow(InvariantError);
	expect(() => createRandom(1).pick([])).toThrow(InvariantError);
	expect(() => createRandomFrom([0, 0, 0, 0])).toThrow(InvariantError);
});
