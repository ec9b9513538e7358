import type { Question } from './question.ts';

/** Most a question of a cartridge can weigh (published profile, rule 2c). */
export const heaviest = 99;

/** How points become weights. */
export interface Weighing {
	/** By what points are multiplied. */
	readonly factor: number;
	/** Whether the weights stand to each other exactly as the points do. */
	readonly isExact: boolean;
}

/**
 * By what points are multiplied so that every question's share is a whole weight from 1 to 99: 1, unless points are shared out
 * among the questions of one item. Where no factor is exact, the greatest is taken and weights are rounded.
 */
export function weighQuestions(questions: readonly Pick<Question, 'points'>[]): Weighing {
	const points = [...new Set(questions.map((question) => question.points))];
	const most = Math.max(...points);
	for (let factor = 1; factor * most <= heaviest + 1e-6; factor += 1) {
		const isExact = points.every((each) => Math.abs(each * factor - Math.round(each * factor)) < 1e-6);
		if (isExact) return { factor, isExact };
	}
	return { factor: heaviest / most, isExact: false };
}

/** The weight of a question. */
export function weightOf({ points }: Pick<Question, 'points'>, { factor }: Weighing): number {
	return Math.max(1, Math.round(points * factor));
}

/** By how much the share of any question in the whole differs from that of its points, in percent of the whole: 0 where weights are exact. */
export function largestShift(questions: readonly Pick<Question, 'points'>[], weighing: Weighing): number {
	const points = questions.reduce((sum, question) => sum + question.points, 0);
	const weights = questions.reduce((sum, question) => sum + weightOf(question, weighing), 0);
	const shifts = questions.map((question) =>
		Math.abs(question.points / points - weightOf(question, weighing) / weights),
	);
	return Math.max(...shifts) * 100;
}
