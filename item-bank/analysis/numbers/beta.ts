import { invariant } from '../../invariant.ts';

const lanczos = [
	0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
	12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** Natural logarithm of the gamma function for x > 0, by the approximation of Lanczos 1964 (g = 7), about 15 digits. */
export function logGamma(x: number): number {
	if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
	const z = x - 1;
	const t = z + 7.5;
	const sum = lanczos.reduce((total, value, index) => total + (index === 0 ? value : value / (z + index)), 0);
	return Math.log(2 * Math.PI) / 2 + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Natural logarithm of the beta function. */
export function logBeta(a: number, b: number): number {
	return logGamma(a) + logGamma(b) - logGamma(a + b);
}

/** Natural logarithm of the binomial coefficient n over k. */
export function logChoose(n: number, k: number): number {
	return logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
}

/** Share of a beta distribution below x (0 to 1), by its continued fraction (Abramowitz & Stegun 26.5.8). */
export function betaBelow(x: number, a: number, b: number): number {
	if (x <= 0) return 0;
	if (x >= 1) return 1;
	if (x > (a + 1) / (a + b + 2)) return 1 - betaBelow(1 - x, b, a);
	const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta(a, b)) / a;
	const tiny = 1e-300;
	let c = 1;
	let d = 1 / (1 - ((a + b) * x) / (a + 1) || tiny);
	let h = d;
	for (let m = 1; m < 10_000; m += 1) {
		const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
		const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
		let factor = 1;
		for (const term of [even, odd]) {
			d = 1 / (1 + term * d || tiny);
			c = 1 + term / c || tiny;
			factor = c * d;
			h *= factor;
		}
		if (Math.abs(factor - 1) < 1e-15) break;
	}
	return front * h;
}

/** The x below which a share of a beta distribution lies. */
export function betaQuantile(share: number, a: number, b: number): number {
	invariant(share > 0 && share < 1, `no beta quantile of ${share}`);
	let [low, high] = [0, 1];
	// 200 halvings end at neighbouring numbers, also close to 0.
	for (let step = 0; step < 200 && low < high; step += 1) {
		const middle = (low + high) / 2;
		if (middle === low || middle === high) break;
		if (betaBelow(middle, a, b) < share) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

/** The F below which a share of the F distribution lies. */
export function fQuantile(share: number, degrees1: number, degrees2: number): number {
	// From the tail with the smaller x, where the share of the beta distribution keeps its digits.
	const x = betaQuantile(share, degrees1 / 2, degrees2 / 2);
	const rest = x < 0.5 ? 1 - x : betaQuantile(1 - share, degrees2 / 2, degrees1 / 2);
	return (degrees2 * x) / (degrees1 * rest);
}

/** The t above which a share of Student's distribution lies; the share is at most one half. */
export function studentQuantile(shareAbove: number, degrees: number): number {
	const x = betaQuantile(2 * shareAbove, degrees / 2, 0.5);
	return Math.sqrt((degrees * (1 - x)) / x);
}
