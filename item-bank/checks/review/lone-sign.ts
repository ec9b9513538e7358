import { parseMathematics } from '../../expression/parse.ts';
import { findKey } from '../../items/key.ts';
import type { Item, Option } from '../../types.ts';
import { haladyna, type ReviewRule } from '../review-note.ts';

/** A key that is the only negative, or the only positive, number among the options can be guessed. */
export const loneSign: ReviewRule = {
	code: 'review-lone-sign',
	guideline: haladyna(28),
	find: (item) => {
		if (item.kind !== 'choice' || item.options.length < 3) return [];
		const numbers = numbersOf(item.options);
		const finding = findKey(item);
		if (!numbers || !('key' in finding) || finding.key.kind !== 'options') return [];
		const key = item.options.findIndex(({ id }) => finding.key.kind === 'options' && finding.key.options.includes(id));
		const sign = Math.sign(numbers[key] ?? 0);
		if (sign === 0 || numbers.filter((number) => Math.sign(number) === sign).length > 1) return [];
		const word = sign < 0 ? 'negative' : 'positive';
		return [{ path: `/options/${key}`, message: `expected another ${word} option beside the key, found none` }];
	},
};

/** The options as plain numbers; undefined when one is not. */
export function numbersOf(options: readonly Option[]): readonly number[] | undefined {
	const numbers = options.map(({ content }) =>
		content.kind === 'mathematics' ? plainNumber(content.math) : undefined,
	);
	return numbers.every((number) => number !== undefined) ? numbers : undefined;
}

function plainNumber(math: string): number | undefined {
	try {
		const parsed = parseMathematics(math);
		return parsed.kind === 'number' ? parsed.value : undefined;
	} catch {
		return undefined;
	}
}

/** Options of an item as plain numbers; undefined for other items. */
export function numberOptionsOf(item: Item): readonly number[] | undefined {
	return item.kind === 'choice' || item.kind === 'multiple-choice' ? numbersOf(item.options) : undefined;
}
