import type { Problem } from '../../problem.ts';
import type { ExplanationItem, ExplanationResponse } from '../../types.ts';
import type { KeyFinding } from '../item-key.ts';
import type { Outcome } from '../outcome.ts';

/** An explanation has no computed key; its rubric must run from the item's points down to 0 in order. */
export function findRubric(item: ExplanationItem): KeyFinding<{ kind: 'rubric' }> {
	const levels = item.rubric.map(({ points }) => points);
	const problems: Problem[] = [];
	if (levels[0] !== item.points || levels.at(-1) !== 0) {
		const message = `expected levels from ${item.points} points down to 0, found ${levels.join(', ')}`;
		problems.push({ code: 'rubric-range', path: '/rubric', message });
	}
	for (const [index, points] of levels.entries()) {
		const before = levels[index - 1];
		if (before === undefined || points < before) continue;
		const message = `expected fewer points than the level before (${before}), found ${points}`;
		problems.push({ code: 'rubric-order', path: `/rubric/${index}/points`, message });
	}
	return problems.length > 0 ? { problems } : { key: { kind: 'rubric' } };
}

/** The rating of a scorer is the score; without one the response stays unrated. A rating that is no level is invalid. */
export function scoreExplanation(item: ExplanationItem, { text, rating }: ExplanationResponse): Outcome {
	if (rating === undefined) return { state: text.trim() === '' ? 'omitted' : 'unrated' };
	if (!item.rubric.some(({ points }) => points === rating)) return { state: 'invalid', reason: 'rating-not-a-level' };
	if (rating === item.points) return { state: 'correct' };
	return rating === 0 ? { state: 'incorrect' } : { state: 'partly', share: rating / item.points };
}
