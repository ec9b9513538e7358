import { type Finding, found, refuse } from '../finding.ts';

/** Where a raw score stands on the scale of the difficulties. */
export interface PersonMeasure {
	/** Items right among those estimated. */
	readonly score: number;
	/** Warm's weighted likelihood estimate, logits; finite for every score. */
	readonly measure: number;
	/** Logits. */
	readonly standardError: number;
	/** Maximum likelihood, logits; refused for none and all right, which have no such estimate. */
	readonly mostLikely: Finding<number>;
}

/**
 * Person measures of every raw score from 0 to the number of items, given difficulties in logits. Warm 1989 (Psychometrika
 * 54, from memory): the θ where r − Σ P + J/(2 I) = 0 with I = Σ P Q and J = Σ P Q (Q − P); standard error
 * 1/√I. Found by halving, so it always ends.
 */
export function measurePersons(difficulties: Float64Array): readonly PersonMeasure[] {
	return Array.from({ length: difficulties.length + 1 }, (_, score) => {
		const measure = findRoot((theta) => {
			const { expected, information, third } = informationAt(theta, difficulties);
			return score - expected + third / (2 * information);
		});
		const { information } = informationAt(measure, difficulties);
		const isExtreme = score === 0 || score === difficulties.length;
		return {
			score,
			measure,
			standardError: 1 / Math.sqrt(information),
			mostLikely: isExtreme
				? refuse('no-solution', `a score of ${score} in ${difficulties.length} has no most likely measure`)
				: found(findRoot((theta) => score - informationAt(theta, difficulties).expected)),
		};
	});
}

interface InformationAt {
	readonly expected: number;
	readonly information: number;
	readonly third: number;
}

function informationAt(theta: number, difficulties: Float64Array): InformationAt {
	let [expected, information, third] = [0, 0, 0];
	for (const difficulty of difficulties) {
		const chance = 1 / (1 + Math.exp(difficulty - theta));
		const spread = chance * (1 - chance);
		expected += chance;
		information += spread;
		third += spread * (1 - 2 * chance);
	}
	return { expected, information, third };
}

/** The zero of a falling function within ±40 logits. */
function findRoot(value: (theta: number) => number): number {
	let [low, high] = [-40, 40];
	for (let step = 0; step < 100; step += 1) {
		const middle = (low + high) / 2;
		if (middle === low || middle === high) break;
		if (value(middle) > 0) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}
