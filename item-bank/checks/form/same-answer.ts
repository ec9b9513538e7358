import { answerOf } from '../../forms/asked.ts';
import { type FormRule, listPositions, type PlacedItem } from '../placed-item.ts';
import { haladyna } from '../rule.ts';

/** A number may come back on a form, as there are few small integers, but not right away (our choice). */
const fewestInARow = 2;

/** The same number as the answer of one item after another. */
export const sameAnswer: FormRule = {
	guideline: haladyna(4),
	find: (placed) =>
		runsOf(placed).flatMap(({ answer, members }) => {
			const last = members.at(-1);
			if (answer === undefined || last === undefined || members.length < fewestInARow) return [];
			const message = `expected another answer after ${answer}, found it at positions ${listPositions(members)}`;
			return [{ code: 'review-form-same-answer', path: last.path, message }];
		}),
};

interface Run {
	readonly answer: string | undefined;
	readonly members: PlacedItem[];
}

function runsOf(placed: readonly PlacedItem[]): readonly Run[] {
	const runs: Run[] = [];
	for (const one of placed) {
		const answer = answerOf(one.item);
		const run = runs.at(-1);
		if (run && run.answer === answer) run.members.push(one);
		else runs.push({ answer, members: [one] });
	}
	return runs;
}
