import type { Random } from '../../random/random.ts';
import type { Interval } from '../intervals.ts';
import { normalQuantile } from '../numbers/normal.ts';

/** Earned over possible of one student, on one or two sittings; without a sitting both are 0. */
export interface StudentPoints {
	readonly earned: Float64Array;
	readonly possible: Float64Array;
}

/** How an interval of pooled items came about. */
export type PooledMethod = 'resampling' | 'ratio';

/** Students above which the interval is computed from the spread between students instead of by drawing. */
const mostDrawn = 2000;
const draws = 1000;

/**
 * Interval of Σ earned/Σ possible, or of its change from a first to a second sitting, with students as the unit, because the
 * responses of one student go together. Up to 2,000 students: 1,000 samples of as many students drawn with replacement, and the
 * middle share of what they give (percentile bootstrap, Efron 1979). Above: ratio ± z √Σ d², d = (earned − ratio ×
 * possible)/Σ possible, n/(n − 1) times (linearised ratio, as in Cochran 1977; both from memory). At least two students.
 */
export function intervalOfStudents(
	sittings: readonly StudentPoints[],
	random: Random,
	confidence: number,
): { readonly interval: Interval; readonly method: PooledMethod } {
	const [first] = sittings;
	const present = [...(first?.earned.keys() ?? [])].filter((place) =>
		sittings.some(({ possible }) => (possible[place] as number) > 0),
	);
	const data = sittings.map(({ earned, possible }) => ({
		earned: Float64Array.from(present, (place) => earned[place] as number),
		possible: Float64Array.from(present, (place) => possible[place] as number),
	}));
	return present.length > mostDrawn
		? { interval: spreadInterval(data, confidence), method: 'ratio' }
		: { interval: drawInterval(data, random, confidence), method: 'resampling' };
}

function ratioOf({ earned, possible }: StudentPoints): { readonly ratio: number; readonly all: number } {
	const all = possible.reduce((sum, value) => sum + value, 0);
	return { ratio: earned.reduce((sum, value) => sum + value, 0) / all, all };
}

function spreadInterval(data: readonly StudentPoints[], confidence: number): Interval {
	const ratios = data.map(ratioOf);
	const count = data[0]?.earned.length ?? 0;
	let squares = 0;
	for (let student = 0; student < count; student += 1) {
		let pull = 0;
		for (const [sitting, { earned, possible }] of data.entries()) {
			const { ratio = 0, all = 1 } = ratios[sitting] ?? {};
			const sign = data.length === 2 && sitting === 0 ? -1 : 1;
			pull += (sign * ((earned[student] as number) - ratio * (possible[student] as number))) / all;
		}
		squares += pull * pull;
	}
	const centre = differenceOf(ratios.map(({ ratio }) => ratio));
	const reach = normalQuantile((1 + confidence) / 2) * Math.sqrt((squares * count) / (count - 1));
	const least = data.length === 2 ? -1 : 0;
	return { low: Math.max(least, centre - reach), high: Math.min(1, centre + reach) };
}

function drawInterval(data: readonly StudentPoints[], random: Random, confidence: number): Interval {
	const count = data[0]?.earned.length ?? 0;
	const drawn = new Float64Array(draws);
	const sums = data.map(() => ({ earned: 0, possible: 0 }));
	for (let draw = 0; draw < draws; draw += 1) {
		for (const sum of sums) {
			sum.earned = 0;
			sum.possible = 0;
		}
		for (let pick = 0; pick < count; pick += 1) {
			const student = random.nextInteger(0, count - 1);
			for (let sitting = 0; sitting < data.length; sitting += 1) {
				const sum = sums[sitting] as { earned: number; possible: number };
				sum.earned += data[sitting]?.earned[student] as number;
				sum.possible += data[sitting]?.possible[student] as number;
			}
		}
		// A sample without anybody from one sitting says nothing and is drawn again.
		if (sums.some(({ possible }) => possible === 0)) draw -= 1;
		else drawn[draw] = differenceOf(sums.map(({ earned, possible }) => earned / possible));
	}
	drawn.sort();
	const at = (share: number): number =>
		drawn[Math.min(draws - 1, Math.max(0, Math.round(share * draws - 0.5)))] as number;
	return { low: at((1 - confidence) / 2), high: at((1 + confidence) / 2) };
}

function differenceOf([first = 0, second]: readonly number[]): number {
	return second === undefined ? first : second - first;
}
