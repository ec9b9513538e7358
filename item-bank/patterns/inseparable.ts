import { getPattern } from './index.ts';
import type { PatternId } from './pattern.ts';
import { listPool } from './probes.ts';
import type { Question } from './question.ts';
import type { TwoNumbers } from './subject.ts';
import { workRight, workTwoNumbers } from './work.ts';

/**
 * Groups of two or more of the patterns that agree on every item of the same kind, so that no other numbers would tell
 * them apart: the same operation, signs and larger size (our own enumeration over −12 to 12 without 0). Known for
 * questions about two numbers; none for others.
 */
export function listInseparable(
	{ subjects, isGridded }: Question,
	ids: readonly PatternId[],
): readonly (readonly PatternId[])[] {
	const [first] = subjects;
	if (ids.length < 2 || first?.kind !== 'two-numbers') return [];
	const alike = listPool(first.operator).filter((item) => kindOf(item) === kindOf(first));
	const groups = new Map<string, PatternId[]>();
	for (const id of ids) {
		const answers = alike.map((item) => answerBy(id, item, isGridded)).join(' ');
		groups.set(answers, [...(groups.get(answers) ?? []), id]);
	}
	return alike.length === 0 ? [] : [...groups.values()].filter((group) => group.length > 1);
}

function answerBy(id: PatternId, item: TwoNumbers, isGridded: boolean): number | undefined {
	const { slips } = getPattern(id);
	const answer = workTwoNumbers(slips, item) ?? workRight(item);
	return isGridded && answer !== undefined ? (slips.gridEntry?.(answer) ?? answer) : answer;
}

function kindOf({ operator, left, right }: TwoNumbers): string {
	return [operator, Math.sign(left), Math.sign(right), Math.sign(Math.abs(left) - Math.abs(right))].join(' ');
}
