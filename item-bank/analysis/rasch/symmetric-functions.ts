/**
 * Elementary symmetric functions γ0 … γk of positive numbers by the summation algorithm (Fischer 1974, from memory), which
 * only adds and so keeps its digits. Numbers may be left out by place.
 */
export function symmetricFunctions(values: Float64Array, without: readonly number[] = []): Float64Array {
	const functions = new Float64Array(values.length + 1);
	functions[0] = 1;
	let used = 0;
	for (let place = 0; place < values.length; place += 1) {
		if (without.includes(place)) continue;
		const value = values[place] as number;
		used += 1;
		for (let order = used; order > 0; order -= 1) {
			functions[order] = (functions[order] as number) + value * (functions[order - 1] as number);
		}
	}
	return functions;
}
