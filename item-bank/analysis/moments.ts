/** What sums over numbers give. */
export interface Moments {
	readonly count: number;
	readonly mean: number;
	/** Mean of squared deviations: divided by n. */
	readonly variance: number;
	/** Divided by n − 1; 0 for a single value. */
	readonly sampleVariance: number;
}

/** Count, mean and variances of at least one number; without numbers all are 0. */
export function momentsOf(values: Float64Array | readonly number[]): Moments {
	const count = values.length;
	if (count === 0) return { count, mean: 0, variance: 0, sampleVariance: 0 };
	let sum = 0;
	for (let index = 0; index < count; index += 1) sum += values[index] as number;
	const mean = sum / count;
	let squares = 0;
	for (let index = 0; index < count; index += 1) squares += ((values[index] as number) - mean) ** 2;
	// Rounding alone leaves a little where all values are one fraction; that is no variance.
	if (squares <= count * (Math.abs(mean) * 1e-12) ** 2) squares = 0;
	return { count, mean, variance: squares / count, sampleVariance: count > 1 ? squares / (count - 1) : 0 };
}

/** Mean product of deviations of two lists of the same length: the covariance divided by n. */
export function covarianceOf(first: Float64Array, firstMean: number, second: Float64Array, secondMean: number): number {
	let sum = 0;
	for (let index = 0; index < first.length; index += 1) {
		sum += ((first[index] as number) - firstMean) * ((second[index] as number) - secondMean);
	}
	return first.length === 0 ? 0 : sum / first.length;
}
