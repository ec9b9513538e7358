/**
 * Webb's balance of representation over the objectives that a form hits: 1 − (Σ |1/O − I(k)/H|) / 2, where O is the number of
 * objectives hit, I(k) the items on objective k and H all hits; 1 when each is hit equally often. Objectives without items do
 * not count, and no hits at all give 0. Formula from memory.
 */
export function balanceOfRepresentation(itemsPerObjective: readonly number[]): number {
	const hits = itemsPerObjective.filter((items) => items > 0);
	const all = hits.reduce((sum, items) => sum + items, 0);
	if (all === 0) return 0;
	return 1 - hits.reduce((sum, items) => sum + Math.abs(1 / hits.length - items / all), 0) / 2;
}
