import type { Form, Item } from '../types.ts';
import { formReadingGrade } from './form/form-reading-grade.ts';
import { giveaway } from './form/giveaway.ts';
import { keyPlaces } from './form/key-places.ts';
import { repeatedSetting } from './form/repeated-setting.ts';
import { sameAnswer } from './form/same-answer.ts';
import { sameNumbers } from './form/same-numbers.ts';
import { type FormRule, placeItems } from './placed-item.ts';
import type { ReviewNote } from './rule.ts';

/** Every rule about the items of one form, in the order of their notes. */
export const formRules: readonly FormRule[] = [
	keyPlaces,
	giveaway,
	sameNumbers,
	sameAnswer,
	repeatedSetting,
	formReadingGrade,
];

/** What the rules of item writing say of items that stand on one form: advice for a person, with paths into the form. */
export function reviewForm(
	form: Form,
	findItem: (id: string, version: number) => Item | undefined,
): readonly ReviewNote[] {
	const placed = placeItems(form, findItem);
	return formRules.flatMap(({ guideline, find }) =>
		find(placed).map((problem): ReviewNote => ({ severity: 'advise', ...problem, guideline })),
	);
}
