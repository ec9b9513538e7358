import { isShownBy } from '../../figures/expressions-shown.ts';
import type { Problem } from '../../problem.ts';
import type { MatchItem, MatchPair, MatchResponse, Option } from '../../types.ts';
import { expressionAt, mathematicsOf, notComputable, worthAt } from '../compute.ts';
import type { KeyFinding } from '../item-key.ts';
import type { Outcome } from '../outcome.ts';

/** Key of a match item: the one partner of each left entry. A right entry is the partner of at most one. */
export function findMatchKey(item: MatchItem): KeyFinding<{ kind: 'pairs'; pairs: readonly MatchPair[] }> {
	const problems: Problem[] = [];
	const pairs: MatchPair[] = [];
	for (const [index, left] of item.left.entries()) {
		const partners = item.right.filter((right, at) => arePartners(item, left, index, right, at));
		const [partner] = partners;
		if (partner && partners.length === 1) pairs.push({ left: left.id, right: partner.id });
		else {
			const found = partners.length === 0 ? 'none' : partners.map(({ id }) => id).join(' and ');
			const message = `expected one partner of "${left.id}" on the right, found ${found}`;
			problems.push({ code: 'match-partner-count', path: `/left/${index}`, message });
		}
	}
	const taken = pairs.map(({ right }) => right);
	for (const [index, { id }] of item.right.entries()) {
		if (taken.filter((right) => right === id).length <= 1) continue;
		const message = `expected each entry on the right to have at most one partner, but "${id}" has more`;
		problems.push({ code: 'match-partner-shared', path: `/right/${index}`, message });
	}
	return problems.length > 0 ? { problems } : { key: { kind: 'pairs', pairs } };
}

/** All pairs right earns the points; with credit in parts each right pair earns its share. An entry used twice is invalid. */
export function scoreMatch(item: MatchItem, key: readonly MatchPair[], { pairs }: MatchResponse): Outcome {
	if (pairs.length === 0) return { state: 'omitted' };
	const isOffered = (options: readonly Option[], id: string): boolean => options.some((option) => option.id === id);
	if (pairs.some(({ left, right }) => !isOffered(item.left, left) || !isOffered(item.right, right))) {
		return { state: 'invalid', reason: 'option-not-offered' };
	}
	const isRepeated = (ids: readonly string[]): boolean => new Set(ids).size < ids.length;
	if (isRepeated(pairs.map(({ left }) => left)) || isRepeated(pairs.map(({ right }) => right))) {
		return { state: 'invalid', reason: 'double-mark' };
	}
	const right = pairs.filter((pair) =>
		key.some((wanted) => wanted.left === pair.left && wanted.right === pair.right),
	).length;
	if (right === key.length && pairs.length === key.length) return { state: 'correct' };
	const share = item.credit === 'parts' ? right / key.length : 0;
	return share > 0 ? { state: 'partly', share } : { state: 'incorrect' };
}

function arePartners(item: MatchItem, left: Option, leftIndex: number, right: Option, rightIndex: number): boolean {
	const leftPath = `/left/${leftIndex}`;
	const rightPath = `/right/${rightIndex}`;
	if (item.partners === 'same-value') {
		return worthAt(mathematicsOf(left, leftPath), leftPath) === worthAt(mathematicsOf(right, rightPath), rightPath);
	}
	if (left.content.kind === 'figure' && right.content.kind !== 'figure') {
		return isShownBy(expressionAt(mathematicsOf(right, rightPath), rightPath), left.content.figure);
	}
	if (right.content.kind === 'figure') {
		return isShownBy(expressionAt(mathematicsOf(left, leftPath), leftPath), right.content.figure);
	}
	throw notComputable(leftPath, 'a figure on one side', 'none');
}
