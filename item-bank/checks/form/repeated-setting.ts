import { type FormRule, groupPlaced, listPositions } from '../placed-item.ts';
import { commonPractice } from '../rule.ts';

/** Items of one setting that a form can bear whatever its length (our choice). */
const fewest = 4;

/** One setting for more than half of the stories: who knows it is ahead, who does not is behind. */
export const repeatedSetting: FormRule = {
	guideline: commonPractice,
	find: (placed) => {
		const told = placed.filter(({ item }) => item.context !== undefined);
		return groupPlaced(told, ({ context }) => (context ? [context.setting] : []))
			.filter(({ members }) => members.length >= fewest && members.length * 2 > told.length)
			.map(({ name, members }) => ({
				code: 'review-form-repeated-setting',
				path: members.at(-1)?.path ?? '',
				message: `expected several settings, found "${name}" at positions ${listPositions(members)} of ${told.length} items with one`,
			}));
	},
};
