import { invariant } from '../../invariant.ts';

/**
 * Upper tail of the error function to about 15 digits: the series of the incomplete gamma function below 1.5, its continued
 * fraction above (Abramowitz & Stegun 6.5.29 and 6.5.31 with a = 1/2; formulas from memory, values checked against R).
 */
export function complementaryError(x: number): number {
	if (x < 0) return 2 - complementaryError(-x);
	const square = x * x;
	const front = Math.exp(-square) / Math.sqrt(Math.PI);
	if (square < 1.5) {
		let term = 2 * x;
		let sum = term;
		for (let n = 1; term > sum * 1e-17; n += 1) {
			term *= (2 * square) / (2 * n + 1);
			sum += term;
		}
		return 1 - front * sum;
	}
	// Lentz's way from the front, so that no number of terms has to be chosen.
	let b = square + 0.5;
	let c = 1e300;
	let d = 1 / b;
	let h = d;
	for (let n = 1; n < 500; n += 1) {
		const a = -n * (n - 0.5);
		b += 2;
		d = 1 / (a * d + b);
		c = b + a / c;
		const factor = c * d;
		h *= factor;
		if (Math.abs(factor - 1) < 1e-16) break;
	}
	return front * x * h;
}

/** Share of the standard normal distribution below z. */
export function normalBelow(z: number): number {
	return complementaryError(-z / Math.SQRT2) / 2;
}

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
	return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/**
 * The z below which a share of the standard normal distribution lies; the share is above 0 and below 1. Starts from
 * Abramowitz & Stegun 26.2.23 and is refined by Halley's method.
 */
export function normalQuantile(share: number): number {
	invariant(share > 0 && share < 1, `no normal quantile of ${share}`);
	if (share > 0.5) return -normalQuantile(1 - share);
	const t = Math.sqrt(-2 * Math.log(share));
	let z = -(t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))));
	for (let step = 0; step < 4; step += 1) {
		const error = (normalBelow(z) - share) / normalDensity(z);
		z -= error / (1 + (z * error) / 2);
	}
	return z;
}

/** Probability of a chi-square value above x with one degree of freedom. */
export function chiSquareAbove(x: number): number {
	return complementaryError(Math.sqrt(x / 2));
}
