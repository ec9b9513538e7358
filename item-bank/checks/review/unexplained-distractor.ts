import { findKey } from '../../items/key.ts';
import { haladyna, type ReviewRule } from '../review-note.ts';

/** A wrong option that no error pattern leads to tells nothing when it is chosen. */
export const unexplainedDistractor: ReviewRule = {
	code: 'review-unexplained-distractor',
	guideline: haladyna(30),
	find: (item) => {
		if (item.kind !== 'choice' && item.kind !== 'multiple-choice') return [];
		const finding = findKey(item);
		if (!('key' in finding) || finding.key.kind !== 'options') return [];
		const keys = finding.key.options;
		return item.options.flatMap(({ id, patterns = [] }, index) => {
			if (keys.includes(id) || patterns.length > 0) return [];
			return [
				{
					path: `/options/${index}`,
					message: `expected the error patterns that lead to option ${id.toUpperCase()}, found none`,
				},
			];
		});
	},
};
