/** An order with an entry put at a place, 0 is first; the others close up. Places beyond the end are the end. */
export function moveEntry(order: readonly string[], id: string, to: number): readonly string[] {
	return order.filter((other) => other !== id).toSpliced(to, 0, id);
}
