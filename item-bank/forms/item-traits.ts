import { estimateDifficulty } from '../difficulty/estimate-difficulty.ts';
import { readingLoadOf } from '../difficulty/reading.ts';
import type { ItemRecord } from '../items/record.ts';
import type { Alignment, Context, Item, ItemShape, KindName, ModelType } from '../types.ts';
import { answerOf, askedMathematics, factsOf, keyPlaceOf, numbersOf } from './asked.ts';
import { crossesZero, shapeOf } from './shape.ts';

/** What a blueprint can see of an item. */
export interface ItemTraits {
	readonly id: string;
	readonly version: number;
	/** Code of the lead alignment in the blueprint's framework, if it has one there. */
	readonly standard: string | undefined;
	readonly model: ModelType;
	readonly kind: KindName;
	readonly dok: number;
	readonly points: number;
	readonly setting: string | undefined;
	readonly role: Context['role'] | undefined;
	readonly shape: ItemShape;
	readonly crossesZero: boolean;
	/** Estimate, 1 to 10. */
	readonly difficulty: number;
	/** Words, rounded up to fives. */
	readonly reading: number;
	readonly answer: string | undefined;
	readonly numbers: string | undefined;
	/** Place of the key among the options, 0 for the first. */
	readonly keyPlace: number | undefined;
	readonly facts: readonly string[];
}

/** The alignment that counts an item in a framework: the primary one, else the first listed there. */
export function leadAlignment(item: Item, framework: string, edition: string): Alignment | undefined {
	const there = item.alignments.filter((one) => one.framework === framework && one.edition === edition);
	return there.find(({ primary }) => primary === true) ?? there[0];
}

/** The traits of an item as a plan in one framework sees them; points may be set by the form. */
export function traitsOf(
	record: Pick<ItemRecord, 'id' | 'version' | 'item'>,
	framework: string,
	edition: string,
	points: number = record.item.points,
): ItemTraits {
	const { item } = record;
	const asked = askedMathematics(item);
	return {
		id: record.id,
		version: record.version,
		standard: leadAlignment(item, framework, edition)?.code,
		model: item.given,
		kind: item.kind,
		dok: item.dok,
		points,
		setting: item.context?.setting,
		role: item.context?.role,
		shape: shapeOf(item),
		crossesZero: asked !== undefined && crossesZero(asked),
		difficulty: estimateDifficulty(item).score,
		reading: readingLoadOf(item),
		answer: answerOf(item),
		numbers: numbersOf(item),
		keyPlace: keyPlaceOf(item),
		facts: factsOf(item),
	};
}
