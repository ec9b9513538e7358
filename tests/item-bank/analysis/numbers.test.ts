import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meanInterval, wilsonInterval } from '../../../item-bank/analysis/intervals.ts';
import { covarianceOf, momentsOf } from '../../../item-bank/analysis/moments.ts';
import { betaBelow, betaQuantile, fQuantile, studentQuantile } from '../../../item-bank/analysis/numbers/beta.ts';
import { chiSquareAbove, normalBelow, normalQuantile } from '../../../item-bank/analysis/numbers/normal.ts';
import { invertSymmetric } from '../../../item-bank/analysis/numbers/symmetric-inverse.ts';

const near = (found: number, expected: number, relative = 1e-11): void =>
	expect(Math.abs(found / expected - 1), `${found} for ${expected}`).toBeLessThan(relative);

// R 4.2.2: pnorm, qnorm, pchisq, pbeta, qf, qt.
test.each([
	[-8, 6.220960574271785e-16],
	[-3, 0.001349898031630095],
	[-0.3, 0.3820885778110473],
	[0, 0.5],
	[1.2, 0.8849303297782918],
	[1.5, 0.9331927987311419],
	[6, 0.9999999990134123],
])('the normal distribution below %d is what R gives', (z, share) => near(normalBelow(z), share));

test.each([
	[1e-10, -6.361340902404056],
	[0.001, -3.090232306167813],
	[0.2, -0.8416212335729142],
	[0.7, 0.5244005127080407],
	[0.975, 1.959963984540054],
])('the normal quantile of %d is what R gives', (share, z) => near(normalQuantile(share), z));

test.each([
	[0.001, 0.9747728793699604],
	[3.841458820694124, 0.05],
	[40, 2.539628589470865e-10],
])('the chi-square tail above %d is what R gives', (x, share) => near(chiSquareAbove(x), share));

test.each([
	[0.3, 2, 5, 0.579825],
	[0.9, 0.5, 0.5, 0.7951672353008666],
	[0.01, 30, 2, 3.07e-59],
	[0.97, 200, 4, 0.1393643536798572],
])('the beta distribution below %d with %d and %d is what R gives', (x, a, b, share) =>
	near(betaBelow(x, a, b), share),
);

test.each([
	[0.025, 9, 81, 0.2924268727271366],
	[0.975, 999, 3996, 1.101451233333412],
	[0.975, 1524, 22_860, 1.074827742965652],
])('the F quantile of %d with %d and %d is what R gives', (share, a, b, f) => near(fQuantile(share, a, b), f, 1e-9));

test.each([
	[0.025, 1, 12.70620473617471],
	[0.025, 9, 2.262157162798205],
	[0.005, 120, 2.617421145106866],
	[0.025, 24_999, 1.960058883701574],
])('the t that %d of the distribution with %d lies above is what R gives', (share, degrees, t) =>
	near(studentQuantile(share, degrees), t, 1e-9),
);

test('a beta quantile is where the share lies below', () => {
	const size = fc.double({ min: 0.6, max: 300, noNaN: true });
	fc.assert(
		fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), size, size, (share, a, b) => {
			expect(betaBelow(betaQuantile(share, a, b), a, b)).toBeCloseTo(share, 9);
		}),
	);
});

// Newcombe 1998, Statistics in Medicine 17, 857 to 872, table I, method 3 (four places, from memory); R's prop.test without
// correction gives the same to 15 places, which are what is held here.
test.each([
	[81, 263, 0.2552885198782743, 0.3662095769828002],
	[15, 148, 0.06238639953073628, 0.160487241723308],
	[0, 20, 0, 0.1611251580528193],
	[1, 29, 0.006113214292762661, 0.1717552187932028],
	[10, 10, 0.7224672001371109, 1],
])("Wilson's interval of %d in %d is the published one", (successes, trials, low, high) => {
	const interval = wilsonInterval(successes, trials);
	expect(interval.low).toBeCloseTo(low, 12);
	expect(interval.high).toBeCloseTo(high, 12);
});

test('the interval of a mean is the t interval, cut off at what is possible', () => {
	// Working: mean 2, variance 1, n 10: 2 ± 2.262157162798205 / √10 = 2 ± 0.71535690...
	const { low, high } = meanInterval({ mean: 2, variance: 1, count: 10 }, { low: 1.5, high: 4 });
	expect(low).toBe(1.5);
	expect(high).toBeCloseTo(2 + 2.262157162798205 / Math.sqrt(10), 9);
});

test('equal fractions have no variance', () => {
	expect(momentsOf(Array.from({ length: 7 }, () => 1 / 3))).toMatchObject({ variance: 0, sampleVariance: 0 });
	expect(momentsOf([])).toEqual({ count: 0, mean: 0, variance: 0, sampleVariance: 0 });
	// Working: 1, 2, 3, 4: mean 2.5, squares 2.25 + .25 + .25 + 2.25 = 5.
	expect(momentsOf([1, 2, 3, 4])).toEqual({ count: 4, mean: 2.5, variance: 1.25, sampleVariance: 5 / 3 });
	expect(covarianceOf(Float64Array.of(1, 2, 3, 4), 2.5, Float64Array.of(4, 3, 2, 1), 2.5)).toBe(-1.25);
});

test('a matrix times its inverse is one, and a singular matrix has none', () => {
	const inverse = invertSymmetric(Float64Array.of(4, 2, 0, 2, 5, 3, 0, 3, 6), 3) ?? new Float64Array(9);
	// Working: determinant 4(30 − 9) − 2(12 − 0) = 60; first cofactor 21, so the first entry is 21/60.
	expect(inverse[0]).toBeCloseTo(21 / 60, 12);
	expect(inverse[1]).toBeCloseTo(-12 / 60, 12);
	expect(invertSymmetric(Float64Array.of(1, 1, 1, 1), 2)).toBeUndefined();
});
