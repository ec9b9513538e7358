import type { Statement } from '../expression/tree.ts';
import { isShownBy } from '../figures/expressions-shown.ts';
import type { Figure } from '../types.ts';
import { readFigure, tryEvaluate } from './item-subjects.ts';
import type { Slips } from './slips.ts';
import { type Answer, type Subject, subjectOf } from './subject.ts';
import { answerUnder } from './work.ts';

/**
 * Whether a statement that is false looks true to somebody who makes the slips: every side is worked under them, from
 * symbols or from a figure that shows it, and sides are compared by their order. Comparisons of plain numbers look true
 * only under a slip about order, equations only under slips that change a side.
 */
export function looksTrueUnder(slips: Slips, { sides, relations }: Statement, figures: readonly Figure[]): boolean {
	const right = sides.map(tryEvaluate);
	const readings = sides.map((side): readonly Subject[] => {
		const shown = figures.filter((figure) => isShownBy(side, figure)).flatMap((figure) => readFigure(figure) ?? []);
		return [subjectOf(side), ...shown];
	});
	const worked = readings.map((subjects) => subjects.map((subject) => answerUnder(slips, subject)));
	// Only one side is read off a figure at a time; more would multiply cases that no item has.
	const most = Math.max(...worked.map((values) => values.length));
	for (let reading = 0; reading < most; reading += 1) {
		const values = worked.map((options) => options[Math.min(reading, options.length - 1)]);
		if (relations.every((relation, at) => isSeenSo(slips, relation, values[at], values[at + 1]))) {
			return !relations.every((relation, at) => isSeenSo({}, relation, right[at], right[at + 1]));
		}
	}
	return false;
}

function isSeenSo(
	slips: Slips,
	relation: Statement['relations'][number],
	left: Answer | undefined,
	right: Answer | undefined,
): boolean {
	if (typeof left !== 'number' || typeof right !== 'number') return false;
	if (left === right) return relation === '=' || relation === '≤' || relation === '≥';
	if (relation === '=') return false;
	const [least] = slips.ordering?.([left, right]) ?? [Math.min(left, right)];
	const isRising = relation === '<' || relation === '≤';
	return isRising === (least === left);
}
