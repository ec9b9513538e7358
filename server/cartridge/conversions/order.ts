import { mathematicsOf, worthAt } from '../../../item-bank/items/compute.ts';
import type { OrderItem, RichText } from '../../../item-bank/types.ts';
import type { Converted } from '../question.ts';
import { exchange, offerArrangements } from './arrangements.ts';

/**
 * An order as a choice among whole orders: the right one, the same backwards, one by size without signs, and orders with two
 * neighbours exchanged. Throws ItemKeyError's cause for entries without worth, which no item with a key has.
 */
export function convertOrder(item: OrderItem, key: readonly string[]): Converted {
	const { entries } = item;
	const right = key.map((id) => entries.findIndex((entry) => entry.id === id));
	const size = entries.map((entry, index) => Math.abs(worthAt(mathematicsOf(entry, ''), `/entries/${index}`)));
	const sign = item.direction === 'ascending' ? 1 : -1;
	const bySize = entries.map((_, index) => index).sort((one, other) => sign * ((size[one] ?? 0) - (size[other] ?? 0)));
	const neighbours = right.slice(1).map((_, index) => exchange(right, index, index + 1));
	const { offered, right: spot } = offerArrangements(right, [[...right].reverse(), bySize, ...neighbours]);
	const texts = entries.map(
		({ content }): RichText =>
			content.kind === 'mathematics' ? `\`${content.math}\`` : content.kind === 'text' ? content.text : '',
	);
	const between = texts.some((text) => text.includes(',')) ? '; ' : ', ';
	return {
		asks: 'choice',
		added: [
			{ kind: 'paragraph', text: texts.join(between) },
			{ kind: 'paragraph', text: 'Which order is right?' },
		],
		options: offered.map((each) => ({
			bank: each.map((index) => entries[index]?.id ?? '').join('>'),
			content: { kind: 'text', text: each.map((index) => texts[index] ?? '').join(between) },
		})),
		right: [spot],
	};
}
