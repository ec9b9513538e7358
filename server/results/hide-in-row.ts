/**
 * Places of a row whose sizes may not be told where the sum of the row is known elsewhere: those from 1 up to below `least`, and with
 * them the smallest others until together they come to `least`, so that what is left of the sum is again a group large enough.
 */
export function hideInRow(sizes: readonly number[], least: number): ReadonlySet<number> {
	const order = [...sizes.keys()].filter((place) => (sizes[place] ?? 0) > 0);
	order.sort((a, b) => (sizes[a] ?? 0) - (sizes[b] ?? 0));
	const hidden = new Set<number>();
	let sum = 0;
	for (const place of order) {
		const size = sizes[place] ?? 0;
		if (size >= least && (hidden.size === 0 || sum >= least)) break;
		hidden.add(place);
		sum += size;
	}
	return hidden;
}
