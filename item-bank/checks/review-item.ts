import type { Item } from '../types.ts';
import { checkItem } from './check-item.ts';
import { reviewRules } from './review/index.ts';
import { commonPractice, type Guideline, haladyna, type ReviewNote } from './review-note.ts';

/** The guidelines behind problems that stop an item, where there is one. */
const stopGuidelines: Readonly<Record<string, Guideline>> = {
	'primary-alignment-count': haladyna(1),
	'stem-without-question': haladyna(14),
	'key-not-unique': haladyna(19),
	'key-missing': haladyna(19),
	'key-mismatch': haladyna(19),
	'option-number-order': haladyna(21),
	'option-repeated': haladyna(22),
	'option-kinds-mixed': haladyna(23),
};

/** All that the rules of item writing say of an item: what stops it first, then advice for a person to judge. */
export function reviewItem(item: Item): readonly ReviewNote[] {
	const stops = checkItem(item).map(
		(problem): ReviewNote => ({
			severity: 'stop',
			...problem,
			guideline: stopGuidelines[problem.code] ?? commonPractice,
		}),
	);
	const advice = reviewRules.flatMap(({ code, guideline, find }) =>
		find(item).map((finding): ReviewNote => ({ severity: 'advise', code, ...finding, guideline })),
	);
	return [...stops, ...advice];
}
