import { keyPlaceOf } from '../../forms/asked.ts';
import { type FormRule, listPositions, type PlacedItem } from '../placed-item.ts';
import { haladyna } from '../rule.ts';

/** Keys at one option in a row before students look for a rule (our choice). */
const mostInARow = 3;

/** Keys at one option that are many: these, and more than twice their share; less comes by chance alone (our choice). */
const fewest = 4;

/** The key at one option far more often than at the others, or several times in a row. */
export const keyPlaces: FormRule = {
	guideline: haladyna(20),
	find: (placed) => {
		const choices = placed.flatMap((one) => {
			const place = keyPlaceOf(one.item);
			const count = one.item.kind === 'choice' ? one.item.options.length : 0;
			return place === undefined ? [] : [{ one, place, count }];
		});
		const places = [...new Set(choices.map(({ place }) => place))].sort((a, b) => a - b);
		const crowded = places.flatMap((place) => {
			const there = choices.filter((choice) => choice.place === place).length;
			const fair = choices.filter(({ count }) => count > place).reduce((sum, { count }) => sum + 1 / count, 0);
			if (there < fewest || there < fair * 2 + 1) return [];
			const message = `expected the key at each option about as often, found it at option ${letterOf(place)} in ${there} of ${choices.length} items`;
			return [{ code: 'review-form-key-places', path: '/sections', message }];
		});
		return [...crowded, ...rowsOf(choices)];
	},
};

function rowsOf(choices: readonly { readonly one: PlacedItem; readonly place: number }[]) {
	const rows: { readonly place: number; readonly members: PlacedItem[] }[] = [];
	for (const { one, place } of choices) {
		const row = rows.at(-1);
		if (row && row.place === place) row.members.push(one);
		else rows.push({ place, members: [one] });
	}
	return rows
		.filter(({ members }) => members.length > mostInARow)
		.map(({ place, members }) => ({
			code: 'review-form-key-in-a-row',
			path: members.at(-1)?.path ?? '',
			message: `expected the key at one option at most ${mostInARow} times in a row, found it at option ${letterOf(place)} at positions ${listPositions(members)}`,
		}));
}

function letterOf(place: number): string {
	return 'ABCDEFGH'.charAt(place);
}
