import { haladyna, type ReviewRule } from '../review-note.ts';
import { numberOptionsOf } from './lone-sign.ts';

/** One option ten times as large as every other stands out as key or as filler. */
export const oddSize: ReviewRule = {
	code: 'review-odd-size',
	guideline: haladyna(28),
	find: (item) => {
		const numbers = numberOptionsOf(item);
		if (!numbers || numbers.length < 3) return [];
		const sizes = numbers.map(Math.abs);
		const [largest = 0, next = 0] = [...sizes].sort((a, b) => b - a);
		if (next === 0 || largest < next * 10) return [];
		const place = sizes.indexOf(largest);
		return [
			{
				path: `/options/${place}`,
				message: `expected sizes of one kind, found ${numbers[place]} beside numbers up to ${next}`,
			},
		];
	},
};
