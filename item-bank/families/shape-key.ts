import { listNodes } from '../expression/count.ts';
import { allAsked, numbersIn, stemMathematics } from '../forms/asked.ts';
import { crossesZero } from '../forms/shape.ts';
import { entryListsOf } from '../items/entries.ts';
import { partsOf } from '../items/parts.ts';
import { listWrongAnswers } from '../patterns/wrong-answers.ts';
import type { Item, PartItem } from '../types.ts';
import { signsOf, sizeBandOf } from './features.ts';

/** What variants of an item share, so that a retake is fair; every part is a text that can be shown and compared. */
export interface ItemShapeKey {
	readonly kind: string;
	readonly given: string;
	readonly answerIn: string;
	readonly dok: string;
	readonly points: string;
	/** Role of a context, '' where there is none. */
	readonly role: string;
	/** Operators and signs of the mathematics asked for, as written. */
	readonly signs: string;
	/** Whether the work passes zero. */
	readonly crossing: string;
	/** Band of the largest size. */
	readonly size: string;
	/** Patterns that lead to wrong answers: those of the options, or all that an answer may show. */
	readonly patterns: string;
}

/** Names of what variants share, in the order in which a mismatch is told. */
export const shapeParts = [
	'kind',
	'given',
	'answerIn',
	'dok',
	'points',
	'role',
	'signs',
	'crossing',
	'size',
	'patterns',
] as const satisfies readonly (keyof ItemShapeKey)[];

const readers: Readonly<Record<keyof ItemShapeKey, (item: Item) => string>> = {
	kind: ({ kind }) => kind,
	given: ({ given }) => given,
	answerIn: ({ answerIn }) => answerIn,
	dok: ({ dok }) => String(dok),
	points: ({ points }) => String(points),
	role: ({ context }) => context?.role ?? '',
	signs: (item) => partsOf(item).map(signsIn).join(' | '),
	crossing: (item) =>
		partsOf(item)
			.map((part) => String(allAsked(part).some(crossesZero)))
			.join(' | '),
	size: (item) => String(sizeBandOf(partsOf(item).flatMap(shownNumbers))),
	patterns: (item) => partsOf(item).map(patternsIn).join(' | '),
};

/** The shape of an item. */
export function shapeKeyOf(item: Item): ItemShapeKey {
	const entries = shapeParts.map((part) => [part, readers[part](item)] as const);
	return Object.fromEntries(entries) as Readonly<Record<(typeof shapeParts)[number], string>>;
}

/** The first part in which an item differs from a shape; undefined when it has the shape. */
export function findShapeDifference(item: Item, shape: ItemShapeKey): keyof ItemShapeKey | undefined {
	return shapeParts.find((part) => readers[part](item) !== shape[part]);
}

/** Operators and signs of what is asked, such as "- add +"; of an order item how many entries are negative. */
function signsIn(part: PartItem): string {
	const asked = allAsked(part);
	if (asked.length === 0) return signsOf([...shownNumbers(part)].sort((a, b) => a - b));
	return asked
		.map((mathematics) =>
			listNodes(mathematics)
				.map((node) => {
					if (node.kind === 'number') return signsOf([node.value]);
					return node.kind === 'operation' ? node.operator : node.kind === 'group' ? '' : node.kind;
				})
				.filter((sign) => sign !== '')
				.join(' '),
		)
		.sort()
		.join('; ');
}

/** Numbers a student sees: of what is asked, of the stem, of entries and of a gap. */
function shownNumbers(item: Item): readonly number[] {
	const asked = allAsked(item).flatMap(numbersIn);
	if (asked.length > 0) return asked;
	const entries = partsOf(item)
		.flatMap(entryListsOf)
		.flatMap((list) => list.entries)
		.flatMap(({ content }) =>
			content.kind === 'mathematics' ? [content.math] : content.kind === 'text' ? [content.worth ?? ''] : [],
		);
	const statement = item.kind === 'inline-choice' ? [item.statement] : [];
	const typed = [...entries, ...statement].flatMap((text) => text.match(/(?<![\d)|] ?)-?\d+/g) ?? []).map(Number);
	return typed.length > 0 ? typed : stemMathematics(item).flatMap(numbersIn);
}

function patternsIn(part: PartItem): string {
	const tagged = entryListsOf(part).flatMap(({ entries }) => entries.flatMap(({ patterns = [] }) => patterns));
	const inGap = part.kind === 'inline-choice' ? part.choices.flatMap(({ patterns = [] }) => patterns) : [];
	const led =
		part.kind === 'gridded' || part.kind === 'point' ? listWrongAnswers(part).flatMap(({ patterns }) => patterns) : [];
	return [...new Set([...tagged, ...inGap, ...led])].sort().join(' ');
}
