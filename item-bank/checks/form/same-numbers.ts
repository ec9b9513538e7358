import { factsOf, numbersOf } from '../../forms/asked.ts';
import { type FormRule, groupPlaced, listPositions } from '../placed-item.ts';
import { haladyna } from '../rule.ts';

/** Items about the same numbers: students take one for the other. Those that share a whole fact are another rule's. */
export const sameNumbers: FormRule = {
	guideline: haladyna(4),
	find: (placed) =>
		groupPlaced(placed, (item) => asList(numbersOf(item)))
			.filter(({ members }) => new Set(members.map(({ item }) => factsOf(item).join())).size === members.length)
			.map(({ name, members }) => ({
				code: 'review-form-same-numbers',
				path: members.at(-1)?.path ?? '',
				message: `expected items about numbers of their own, found ${name.split(' ').join(' and ')} at positions ${listPositions(members)}`,
			})),
};

function asList(name: string | undefined): readonly string[] {
	return name === undefined ? [] : [name];
}
