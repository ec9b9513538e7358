import { factsOf } from '../../forms/asked.ts';
import { partsOf } from '../../items/parts.ts';
import { type FormRule, groupPlaced, listPositions } from '../placed-item.ts';
import { haladyna } from '../rule.ts';

/** Items that ask for, or tell, the same fact of arithmetic: one gives the other away. */
export const giveaway: FormRule = {
	guideline: haladyna(4),
	find: (placed) =>
		groupPlaced(placed, (item) => [...new Set(partsOf(item).flatMap(factsOf))]).map(({ name, members }) => ({
			code: 'review-form-giveaway',
			path: members.at(-1)?.path ?? '',
			message: `expected items that do not tell each other's answers, found "${name}" at positions ${listPositions(members)}`,
		})),
};
