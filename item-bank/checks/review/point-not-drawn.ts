import { figuresOf } from '../../items/figures.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** A sentence that speaks of points by their letters. */
const named = /\bpoints? ([A-Z])(?:(?:, | and | to | or )([A-Z]))?(?:,? (?:and|or) ([A-Z]))?\b/g;

/** A point that words name and no number line of the item shows, where other points are named on it. */
export const pointNotDrawn: Rule = {
	severity: 'advise',
	guideline: commonPractice,
	find: ({ item, words }) => {
		const labels = figuresOf(item).flatMap(({ figure }) =>
			figure.kind === 'number-line' ? (figure.points ?? []).flatMap(({ label }) => label ?? []) : [],
		);
		if (labels.length === 0) return [];
		return words.flatMap(({ path, words: text }) => {
			const letters = [...text.matchAll(named)].flatMap((match) =>
				match.slice(1).filter((letter) => letter !== undefined),
			);
			const missing = [...new Set(letters)].filter((letter) => !labels.includes(letter));
			return missing.map((letter) => {
				const message = `expected points of the number line, ${labels.join(', ')}, found "point ${letter}"`;
				return { code: 'review-point-not-drawn', path, message };
			});
		});
	},
};
