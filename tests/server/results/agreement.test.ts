import { expect, test } from 'vitest';
import { compareReaders } from '../../../server/results/agreement.ts';

// Worked by hand. 10 responses, points 0 to 2; table (rows first, columns second):
//   0: 2 1 0   1: 0 3 1   2: 0 1 2     row sums 3 4 3, column sums 2 5 3.
// Agreement 7/10. By chance (3·2 + 4·5 + 3·3)/100 = .35. kappa = (.7 − .35)/.65 = .538462.
// Squared differences: observed 3 × 1 = 3. Expected: (0,1) 3·5 + (0,2) 4·3·3 + (1,0) 4·2 + (1,2) 4·3 + (2,0) 4·3·2 + (2,1) 3·5,
// = 15 + 36 + 8 + 12 + 24 + 15 = 110, over 10 = 11. Weighted kappa = 1 − 3/11 = .727273.
const pairs: readonly (readonly [number, number])[] = [
	[0, 0],
	[0, 0],
	[0, 1],
	[1, 1],
	[1, 1],
	[1, 1],
	[1, 2],
	[2, 1],
	[2, 2],
	[2, 2],
];

test('kappa and weighted kappa are those worked by hand', () => {
	const { table, exact, kappa, weightedKappa } = compareReaders(pairs, 2);
	expect(table).toEqual([
		[2, 1, 0],
		[0, 3, 1],
		[0, 1, 2],
	]);
	expect(exact).toBeCloseTo(0.7, 12);
	expect(kappa).toBeCloseTo(0.35 / 0.65, 12);
	expect(weightedKappa).toBeCloseTo(8 / 11, 12);
});

test('is undefined where chance alone would agree always, and without responses', () => {
	expect(compareReaders([[1, 1]], 2).kappa).toBeUndefined();
	expect(compareReaders([], 2)).toMatchObject({ count: 0, exact: undefined, kappa: undefined });
});
