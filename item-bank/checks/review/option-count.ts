import { haladyna, type ReviewRule } from '../review-note.ts';

/** Three good options suffice; more than five make reading, not mathematics. */
export const optionCount: ReviewRule = {
	code: 'review-option-count',
	guideline: haladyna(18),
	find: (item) => {
		if (item.kind !== 'choice' || item.options.length <= 5) return [];
		return [
			{
				path: '/options',
				message: `expected at most 5 options, found ${item.options.length}; three good ones suffice`,
			},
		];
	},
};
