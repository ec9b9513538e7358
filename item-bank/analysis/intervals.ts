import { invariant } from '../invariant.ts';
import { studentQuantile } from './numbers/beta.ts';
import { normalQuantile } from './numbers/normal.ts';

/** From low to high, on the scale of the figure it belongs to. */
export interface Interval {
	readonly low: number;
	readonly high: number;
}

/** How sure intervals are unless asked otherwise: 95 of 100 such intervals hold the true value. */
export const usualConfidence = 0.95;

/**
 * Interval of a share by Wilson's score method without continuity correction:
 * (p + z²/2n ± z √(p(1−p)/n + z²/4n²)) / (1 + z²/n). Never leaves 0 to 1. Wilson 1927, J. Am. Stat. Assoc. 22, 209 to 212
 * (from memory; values checked against R's prop.test). At least one trial, else an invariant fails.
 */
export function wilsonInterval(successes: number, trials: number, confidence: number = usualConfidence): Interval {
	invariant(trials > 0 && successes >= 0 && successes <= trials, `no share of ${successes} in ${trials}`);
	const z = normalQuantile((1 + confidence) / 2);
	const share = successes / trials;
	const centre = share + (z * z) / (2 * trials);
	const reach = z * Math.sqrt((share * (1 - share)) / trials + (z * z) / (4 * trials * trials));
	const scale = 1 + (z * z) / trials;
	return {
		low: successes === 0 ? 0 : Math.max(0, (centre - reach) / scale),
		high: successes === trials ? 1 : Math.min(1, (centre + reach) / scale),
	};
}

/**
 * Interval of a mean by Student's t: mean ± t √(variance/n), with the variance divided by n − 1, cut off at the bounds the
 * mean cannot leave. At least two values, else an invariant fails.
 */
export function meanInterval(
	{ mean, variance, count }: { readonly mean: number; readonly variance: number; readonly count: number },
	bounds: Interval,
	confidence: number = usualConfidence,
): Interval {
	invariant(count > 1, 'one value has no spread');
	const reach = studentQuantile((1 - confidence) / 2, count - 1) * Math.sqrt(variance / count);
	return { low: Math.max(bounds.low, mean - reach), high: Math.min(bounds.high, mean + reach) };
}
