import type { Item } from '../../item-bank/types.ts';
import type { PlacedItem } from './placed-items.ts';
import { answersAt } from './placed-items.ts';

/** What students are told about some kinds of items: a title, and sentences. */
export interface KindRule {
	readonly title: string;
	readonly sentences: readonly string[];
}

/** Kinds on a form, those of the parts of sets and sets themselves. */
export function kindsOf(placed: readonly PlacedItem[]): ReadonlySet<Item['kind']> {
	return new Set(placed.flatMap((place) => [place.record.item.kind, ...answersAt(place).map(({ item }) => item.kind)]));
}

/** What is told about the kinds on a form and no others; grids have rules of their own. */
export function kindRules(kinds: ReadonlySet<Item['kind']>, grids: 'separate' | 'beside'): readonly KindRule[] {
	const isBeside = grids === 'beside';
	const where = isBeside ? 'beside the item' : 'on the answer sheet';
	const rules: readonly (KindRule & { readonly isTold: boolean })[] = [
		{
			title: 'Items with letters',
			isTold: kinds.has('choice') || kinds.has('multiple-choice') || kinds.has('inline-choice'),
			sentences: [
				...(kinds.has('choice') || kinds.has('inline-choice') ? [`Choose one answer. Fill its bubble ${where}.`] : []),
				...(kinds.has('inline-choice') ? ['Where a statement has an empty box, choose what belongs in the box.'] : []),
				...(kinds.has('multiple-choice')
					? ['Where the item says “Choose all that apply”, more than one answer may be right. Fill a bubble for each.']
					: []),
			],
		},
		{
			title: 'Items with a number line to mark',
			isTold: kinds.has('point'),
			sentences: [
				isBeside
					? 'Fill the bubble at the tick that you choose. There is one bubble for each tick.'
					: 'Mark the point on the line in the booklet. Then fill the bubble at the same tick of the line on the answer sheet.',
			],
		},
		{
			title: 'Items to put in order',
			isTold: kinds.has('order'),
			sentences: [
				isBeside
					? 'Fill in row 1st the letter of what comes first, in row 2nd the letter of what comes next, and so on.'
					: 'Write the letters in order. Then fill on the answer sheet in row 1st the letter of what comes first, and so on.',
			],
		},
		{
			title: 'Items to match',
			isTold: kinds.has('match'),
			sentences: [
				isBeside
					? 'For each letter at the left fill, in its row, the letter of its partner at the right.'
					: 'Write before each entry at the left the letter of its partner. Then fill these letters row by row on the answer sheet.',
			],
		},
		{
			title: 'Items to explain',
			isTold: kinds.has('explanation'),
			sentences: ['Write your answer on the lines in the booklet. Leave the bubbles marked “scorer” empty.'],
		},
		{
			title: 'Items in parts',
			isTold: kinds.has('set'),
			sentences: [
				'Some items have parts with letters. Read what stands above the first part; it belongs to every part.',
			],
		},
	];
	return rules.filter(({ isTold }) => isTold).map(({ title, sentences }) => ({ title, sentences }));
}
