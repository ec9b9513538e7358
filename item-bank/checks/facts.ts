import { parseMathematics } from '../expression/parse.ts';
import { type MathematicsNode, numberNode } from '../expression/tree.ts';
import { entryListsOf } from '../items/entries.ts';
import { findKey, type KeyFinding } from '../items/key.ts';
import { partsOf } from '../items/parts.ts';
import { type ItemText, textsOf } from '../items/texts.ts';
import type { Item, Option, PartItem } from '../types.ts';
import { type WordedText, wordsIn } from './words.ts';

/** An item with what several rules need of it, worked out once. */
export interface ItemFacts {
	readonly item: Item;
	readonly texts: readonly ItemText[];
	readonly words: readonly WordedText[];
	/** What a student answers: the parts of a set, or the item itself. */
	readonly parts: readonly PartFacts[];
}

/** One thing to answer. */
export interface PartFacts {
	readonly part: PartItem;
	/** JSON pointer of the part: '' for an item that is no set. */
	readonly path: string;
	readonly key: KeyFinding;
	readonly lists: readonly ReadList[];
}

/** A list of options or entries. */
export interface ReadList {
	readonly path: string;
	readonly entries: readonly ReadEntry[];
}

/** An option or entry, read. */
export interface ReadEntry {
	readonly option: Option;
	readonly path: string;
	/** The mathematics it shows; undefined for text, figures and what cannot be read. */
	readonly mathematics: MathematicsNode | undefined;
	/** The number it shows and nothing else. */
	readonly number: number | undefined;
	/** Whether it is a right option; false where the right answer is no option, or unknown. */
	readonly isKey: boolean;
}

/** Reads an item for the rules. */
export function readFacts(item: Item): ItemFacts {
	const texts = textsOf(item);
	const parts = partsOf(item).map((part, index) => readPart(part, item.kind === 'set' ? `/parts/${index}` : ''));
	return { item, texts, words: wordsIn(texts), parts };
}

/** The options to mark; none for kinds answered otherwise. */
export function optionEntries({ part, lists }: PartFacts): readonly ReadEntry[] {
	return part.kind === 'choice' || part.kind === 'multiple-choice' ? (lists[0]?.entries ?? []) : [];
}

/** The one right option of a choice among three or more, for rules about what sets it apart from the others. */
export function findLoneKey(
	facts: PartFacts,
): { readonly key: ReadEntry; readonly others: readonly ReadEntry[] } | undefined {
	if (facts.part.kind !== 'choice' || facts.part.options.length < 3) return undefined;
	const entries = optionEntries(facts);
	const key = entries.find(({ isKey }) => isKey);
	return key && { key, others: entries.filter((entry) => entry !== key) };
}

function readPart(part: PartItem, path: string): PartFacts {
	const key = findKey(part);
	const keys = 'key' in key && key.key.kind === 'options' ? key.key.options : [];
	const lists = entryListsOf(part).map((list) => ({
		path: path + list.path,
		entries: list.entries.map((option, index) => readEntry(option, `${path}${list.path}/${index}`, keys)),
	}));
	return { part, path, key, lists };
}

function readEntry(option: Option, path: string, keys: readonly string[]): ReadEntry {
	const mathematics = option.content.kind === 'mathematics' ? readShown(option.content.math) : undefined;
	const number = mathematics?.kind === 'number' ? mathematics.value : undefined;
	return { option, path, mathematics, number, isKey: keys.includes(option.id) };
}

function readShown(math: string): MathematicsNode | undefined {
	return isPlainNumber(math) ? numberNode(Number(math)) : tryParse(math);
}

/** Whether mathematics is a number in its plainest spelling, as most options are: that needs no parser. */
export function isPlainNumber(math: string): boolean {
	return /^(?:0|-?[1-9]\d{0,5})$/.test(math);
}

/** Mathematics, or undefined where it cannot be read, which is a problem of its own. */
export function tryParse(math: string): MathematicsNode | undefined {
	try {
		return parseMathematics(math);
	} catch {
		return undefined;
	}
}
