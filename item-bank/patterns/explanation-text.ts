import type { Explanation } from './explain-answer.ts';
import { getPattern } from './index.ts';
import type { PatternId } from './pattern.ts';

/**
 * An explanation for a teacher, a sentence or two a line: what the answer is consistent with and where the pattern is
 * described, what the item cannot tell apart, then the weaker pairs, at most as many as asked for.
 */
export function describeExplanation(explanation: Explanation, mostPairs = 5): readonly string[] {
	const { isRight, patterns, inseparable, pairs } = explanation;
	if (isRight) return ['This is the right answer.'];
	if (patterns.length === 0 && pairs.length === 0) return ['No pattern leads to this answer, and no two together.'];
	const left = pairs.length - mostPairs;
	return [
		...(patterns.length === 0 ? ['No single pattern leads to this answer.'] : []),
		...patterns.map(getPattern).map(({ sentence, source }) => `${sentence} Source: ${source}.`),
		...(patterns.length > 1 ? ['One answer to this item does not tell these ideas apart.'] : []),
		...inseparable.map((group) => `No other numbers of this kind tell apart: ${nameAll(group, '; ')}.`),
		...pairs.slice(0, mostPairs).map((pair) => `Weaker, two ideas together: ${nameAll(pair, ', and then ')}.`),
		...(left > 0 ? [`There are ${left} more such pairs.`] : []),
	];
}

function nameAll(ids: readonly PatternId[], joint: string): string {
	return ids.map((id) => getPattern(id).name).join(joint);
}
