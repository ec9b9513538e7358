import { WeightError } from './cartridge-errors.ts';
import type { Question } from './question.ts';

/** Most a question of a cartridge can weigh (published profile, rule 2c). */
export const heaviest = 99;

/**
 * By what points are multiplied so that every question's share is a whole weight: 1, unless points are shared out among the
 * questions of one item. Throws {@link WeightError} where no factor keeps all weights from 1 to 99.
 */
export function findFactor(questions: readonly Pick<Question, 'points'>[]): number {
	const points = [...new Set(questions.map((question) => question.points))];
	const most = Math.max(...points);
	for (let factor = 1; factor * most <= heaviest + 1e-6; factor += 1) {
		if (points.every((each) => Math.abs(each * factor - Math.round(each * factor)) < 1e-6)) return factor;
	}
	throw new WeightError(points);
}
