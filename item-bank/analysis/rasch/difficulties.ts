import { type Finding, found, refuse } from '../finding.ts';
import { invertSymmetric } from '../numbers/symmetric-inverse.ts';
import { type ScoreTable, stateCodes } from '../score-table.ts';
import { symmetricFunctions } from './symmetric-functions.ts';

/** Difficulty of an item on the Rasch scale. */
export interface RaschDifficulty {
	/** Logits; higher is harder; the difficulties of all estimated items add up to 0. */
	readonly difficulty: number;
	/** Logits. */
	readonly standardError: number;
}

/** Difficulties of a form. */
export interface RaschScale {
	/** In form order; refused for items that are not estimated. */
	readonly items: readonly Finding<RaschDifficulty>[];
	/** Places of the items that are estimated. */
	readonly estimated: readonly number[];
	/** Their difficulties. */
	readonly difficulties: Float64Array;
	/** Students whose responses say something: neither all right nor all wrong on the estimated items. */
	readonly informative: number;
	readonly extreme: number;
	readonly logLikelihood: number;
}

/** Logits beyond which an estimate is taken to run away: a share of right answers of 3 in 10 million. */
const farthest = 15;

/**
 * Difficulties of the Rasch model, logit P(right) = θ − b, by conditional maximum likelihood (Andersen 1970, 1972; formulas
 * from memory, values held against eRm and the reference set): Newton's method on the exact first and second derivatives.
 * Standard errors: the pseudo-inverse of the information under Σ b = 0. Items everybody or nobody has right carry nothing and
 * are refused one by one, whereupon the others are looked at again. Refused: incomplete tables, items with other points
 * than none and all, fewer than two items or informative students, and responses for which no finite maximum exists
 * (Fischer 1981: a group of items each of whose right answers never comes with a wrong one outside it).
 */
export function estimateDifficulties(table: ScoreTable): Finding<RaschScale> {
	for (const { item, points, states } of table.columns) {
		for (let place = 0; place < points.length; place += 1) {
			const earned = points[place];
			if ((states[place] as number) >= stateCodes.unrated) {
				return refuse('incomplete', `expected points for every response, found none for item "${item.id}"`);
			}
			if (earned !== 0 && earned !== item.maximum) {
				return refuse(
					'not-right-or-wrong',
					`expected 0 or ${item.maximum} points, found ${earned} for item "${item.id}"`,
				);
			}
		}
	}
	const { estimated, refusals, sums, counts, extreme } = keepInformative(table);
	const informative = table.students.length - extreme;
	if (estimated.length < 2) {
		return refuse(
			'too-few-items',
			`expected two or more items some have right and some wrong, found ${estimated.length}`,
		);
	}
	if (informative < 2)
		return refuse('too-few-students', `expected two or more informative students, found ${informative}`);
	const solved = solve(sums, counts);
	if (solved === undefined) {
		return refuse(
			'no-solution',
			'the responses leave the difficulties without a finite estimate: too few, or too orderly',
		);
	}
	const items = table.columns.map((_, place): Finding<RaschDifficulty> => {
		const at = estimated.indexOf(place);
		const refusal = refusals.get(place);
		if (refusal !== undefined) return refuse('no-variance', refusal);
		return found({ difficulty: solved.difficulties[at] as number, standardError: solved.errors[at] as number });
	});
	return found({
		items,
		estimated,
		difficulties: solved.difficulties,
		informative,
		extreme,
		logLikelihood: solved.logLikelihood,
	});
}

interface Sufficient {
	readonly estimated: readonly number[];
	/** Why the other items are not, by place. */
	readonly refusals: ReadonlyMap<number, string>;
	/** Right answers of informative students to each estimated item. */
	readonly sums: Float64Array;
	/** Students at each raw score. */
	readonly counts: Float64Array;
	readonly extreme: number;
}

function keepInformative({ columns, students }: ScoreTable): Sufficient {
	const refusals = new Map<number, string>();
	const nothing = new Float64Array(students.length);
	for (;;) {
		const estimated = [...columns.keys()].filter((place) => !refusals.has(place));
		const scores = new Uint16Array(students.length);
		for (const place of estimated) {
			const points = columns[place]?.points ?? nothing;
			for (let student = 0; student < scores.length; student += 1) {
				if ((points[student] as number) > 0) scores[student] = (scores[student] as number) + 1;
			}
		}
		const counts = new Float64Array(estimated.length + 1);
		for (const score of scores) counts[score] = (counts[score] as number) + 1;
		const extreme = (counts[0] ?? 0) + (estimated.length > 0 ? (counts[estimated.length] as number) : 0);
		const informative = students.length - extreme;
		const sums = new Float64Array(estimated.length);
		for (const [at, place] of estimated.entries()) {
			const points = columns[place]?.points ?? nothing;
			let sum = 0;
			for (let student = 0; student < scores.length; student += 1) {
				if ((points[student] as number) > 0 && scores[student] !== estimated.length) sum += 1;
			}
			sums[at] = sum;
			if (sum === 0 || sum === informative) {
				const who = sum === 0 ? 'nobody' : 'everybody';
				refusals.set(place, `${who} whose other answers differ has item "${columns[place]?.item.id}" right`);
			}
		}
		if (refusals.size === columns.length - estimated.length) return { estimated, refusals, sums, counts, extreme };
	}
}

interface Solution {
	readonly difficulties: Float64Array;
	readonly errors: Float64Array;
	readonly logLikelihood: number;
}

function solve(sums: Float64Array, counts: Float64Array): Solution | undefined {
	const size = sums.length;
	const total = counts.slice(1, size).reduce((sum, count) => sum + count, 0);
	let difficulties = centre(sums.map((sum) => Math.log((total - sum) / sum)));
	let state = differentiate(difficulties, sums, counts);
	for (let step = 0; step < 60; step += 1) {
		const inverse = invertInformation(state.information, size);
		if (inverse === undefined) return undefined;
		const moves = sums.map((_, row) => {
			let move = 0;
			for (let column = 0; column < size; column += 1) {
				move += (inverse[row * size + column] as number) * (state.gradient[column] as number);
			}
			return move;
		});
		// Half steps where a whole one overshoots: the likelihood is concave, so this always ends.
		let scale = 1;
		let next = state;
		let moved = difficulties;
		for (let halving = 0; halving < 40; halving += 1) {
			moved = centre(difficulties.map((value, at) => value + scale * (moves[at] as number)));
			next = differentiate(moved, sums, counts);
			if (next.logLikelihood >= state.logLikelihood - 1e-9 * Math.abs(state.logLikelihood)) break;
			scale /= 2;
		}
		difficulties = moved;
		state = next;
		if (difficulties.some((value) => !(Math.abs(value) < farthest))) return undefined;
		if (moves.every((move) => Math.abs(move) < 1e-10)) {
			const errors = sums.map((_, at) => Math.sqrt(Math.max(0, inverse[at * size + at] as number)));
			return { difficulties, errors, logLikelihood: state.logLikelihood };
		}
	}
	return undefined;
}

interface Derivatives {
	readonly logLikelihood: number;
	/** By each difficulty. */
	readonly gradient: Float64Array;
	readonly information: Float64Array;
}

function differentiate(difficulties: Float64Array, sums: Float64Array, counts: Float64Array): Derivatives {
	const size = sums.length;
	const ease = difficulties.map((value) => Math.exp(-value));
	const all = symmetricFunctions(ease);
	let logLikelihood = -difficulties.reduce((sum, value, at) => sum + value * (sums[at] as number), 0);
	for (let score = 1; score < size; score += 1)
		logLikelihood -= (counts[score] as number) * Math.log(all[score] as number);
	const chances = Array.from(ease, (value, item) =>
		symmetricFunctions(ease, [item]).map((_, score, functions) =>
			score === 0 ? 0 : (value * (functions[score - 1] as number)) / (all[score] as number),
		),
	);
	const gradient = new Float64Array(size);
	const information = new Float64Array(size * size);
	for (let item = 0; item < size; item += 1) {
		const own = chances[item] as Float64Array;
		let [expected, spread] = [0, 0];
		for (let score = 1; score < size; score += 1) {
			const chance = own[score] as number;
			expected += (counts[score] as number) * chance;
			spread += (counts[score] as number) * chance * (1 - chance);
		}
		gradient[item] = expected - (sums[item] as number);
		information[item * size + item] = spread;
		for (let other = 0; other < item; other += 1) {
			const both = symmetricFunctions(ease, [item, other]);
			const product = (ease[item] as number) * (ease[other] as number);
			const theirs = chances[other] as Float64Array;
			let shared = 0;
			for (let score = 1; score < size; score += 1) {
				const together = score < 2 ? 0 : (product * (both[score - 2] as number)) / (all[score] as number);
				shared += (counts[score] as number) * (together - (own[score] as number) * (theirs[score] as number));
			}
			information[item * size + other] = shared;
			information[other * size + item] = shared;
		}
	}
	return { logLikelihood, gradient, information };
}

/** The pseudo-inverse: rows of the information add up to 0, so a constant is added before and taken off after. */
function invertInformation(information: Float64Array, size: number): Float64Array | undefined {
	let trace = 0;
	for (let at = 0; at < size; at += 1) trace += information[at * size + at] as number;
	const constant = trace / size / size;
	const inverse = invertSymmetric(
		information.map((value) => value + constant),
		size,
	);
	return inverse?.map((value) => value - 1 / (constant * size * size));
}

function centre(values: Float64Array): Float64Array {
	const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
	return values.map((value) => value - mean);
}
