import type { Problem } from '../../problem.ts';
import type { OrderItem, OrderResponse } from '../../types.ts';
import { mathematicsOf, worthAt } from '../compute.ts';
import { checkTyped, type KeyFinding } from '../item-key.ts';
import type { Outcome } from '../outcome.ts';

/** Key of an order item: its entries by their worth. */
export function findOrderKey(item: OrderItem): KeyFinding<{ kind: 'order'; order: readonly string[] }> {
	const worths = item.entries.map((entry, index) => {
		const path = `/entries/${index}`;
		return { id: entry.id, worth: worthAt(mathematicsOf(entry, path), path) };
	});
	const sign = item.direction === 'ascending' ? 1 : -1;
	const order = [...worths].sort((a, b) => sign * (a.worth - b.worth)).map(({ id }) => id);
	const problems = [...checkTies(worths), ...checkShown(item, order)];
	problems.push(...checkTyped(order.join(', '), item.key?.join(', '), 'the entries are in the order'));
	return problems.length > 0 ? { problems } : { key: { kind: 'order', order } };
}

/** An order counts when every entry is in its place. */
export function scoreOrder(item: OrderItem, key: readonly string[], { order }: OrderResponse): Outcome {
	if (order.length === 0) return { state: 'omitted' };
	if (order.some((id) => !item.entries.some((entry) => entry.id === id))) {
		return { state: 'invalid', reason: 'option-not-offered' };
	}
	if (order.length !== key.length) return { state: 'invalid', reason: 'order-incomplete' };
	return { state: order.every((id, index) => id === key[index]) ? 'correct' : 'incorrect' };
}

function checkTies(worths: readonly { readonly id: string; readonly worth: number }[]): Problem[] {
	const seen = new Map<number, string>();
	return worths.flatMap(({ id, worth }, index) => {
		const twin = seen.get(worth);
		seen.set(worth, twin ?? id);
		const message = `expected entries of different worth, but "${id}" is worth ${worth} as "${twin}" is`;
		return twin === undefined ? [] : [{ code: 'order-tie', path: `/entries/${index}`, message }];
	});
}

function checkShown(item: OrderItem, order: readonly string[]): Problem[] {
	if (!item.entries.every(({ id }, index) => id === order[index])) return [];
	const message = 'expected entries out of order, found them in the right order already';
	return [{ code: 'order-already-right', path: '/entries', message }];
}
