import { evaluate } from '../expression/evaluate.ts';
import { parseMathematics } from '../expression/parse.ts';
import { printMathematics } from '../expression/print.ts';
import { type EntryList, entryListsOf } from '../items/entries.ts';
import type { Problem } from '../problem.ts';
import type { PartItem } from '../types.ts';

/** Options or entries out of letter order, saying the same, of mixed kinds, or with numbers out of order. */
export function checkOptions(item: PartItem): readonly Problem[] {
	const isChoice = item.kind === 'choice' || item.kind === 'multiple-choice';
	const lists = entryListsOf(item).flatMap((list) => [
		...checkLetters(list.entries, list.path),
		...checkKinds(list),
		...checkDistinct(list),
		...(isChoice ? checkNumericOrder(list) : []),
	]);
	return item.kind === 'inline-choice' ? checkLetters(item.choices, '/choices') : lists;
}

function checkLetters(entries: readonly { readonly id: string }[], path: string): readonly Problem[] {
	return entries.flatMap(({ id }, index) => {
		const expected = String.fromCharCode(97 + index);
		const message = `expected option id "${expected}" at place ${index + 1}, found "${id}"`;
		return id === expected ? [] : [{ code: 'option-id-order', path: `${path}/${index}/id`, message }];
	});
}

function checkKinds({ entries, path }: EntryList): readonly Problem[] {
	const kinds = new Set(entries.map(({ content }) => content.kind));
	const message = `expected options of one kind, found ${[...kinds].join(' and ')}`;
	return kinds.size === 1 ? [] : [{ code: 'option-kinds-mixed', path, message }];
}

function checkDistinct({ entries, path }: EntryList): readonly Problem[] {
	const seen = new Map<string, string>();
	return entries.flatMap(({ id, content }, index) => {
		const face = content.kind === 'mathematics' ? printed(content.math) : JSON.stringify(content);
		const twin = seen.get(face);
		seen.set(face, twin ?? id);
		const message = `expected distinct options, but "${id}" says the same as "${twin}"`;
		return twin === undefined ? [] : [{ code: 'option-repeated', path: `${path}/${index}`, message }];
	});
}

/** Plain numbers stand in increasing order (item-writing guideline 21 of Haladyna, Downing and Rodriguez 2002). */
function checkNumericOrder({ entries, path }: EntryList): readonly Problem[] {
	const values = entries.map(({ content }) => (content.kind === 'mathematics' ? plainNumber(content.math) : undefined));
	if (values.includes(undefined)) return [];
	return values.flatMap((value, index) => {
		const before = values[index - 1];
		if (value === undefined || before === undefined || before < value) return [];
		const message = `expected numbers in increasing order, found ${value} after ${before}`;
		return [{ code: 'option-number-order', path: `${path}/${index}`, message }];
	});
}

function plainNumber(math: string): number | undefined {
	const parsed = tryParse(math);
	return parsed?.kind === 'number' ? evaluate(parsed) : undefined;
}

function printed(math: string): string {
	const parsed = tryParse(math);
	return parsed ? printMathematics(parsed) : math;
}

/** Unreadable mathematics is another check's problem. */
function tryParse(math: string): ReturnType<typeof parseMathematics> | undefined {
	try {
		return parseMathematics(math);
	} catch {
		return undefined;
	}
}
