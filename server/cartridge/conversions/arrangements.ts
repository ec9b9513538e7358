/** Most whole orders, or lists of pairs, offered to choose from. */
export const mostArrangements = 4;

/**
 * The arrangements offered: the right one and the first wrong ones that differ from it and from each other. They stand in an
 * order that follows from their texts alone, so that the place of the right one tells nothing.
 */
export function offerArrangements(
	right: readonly number[],
	wrong: readonly (readonly number[])[],
): { readonly offered: readonly (readonly number[])[]; readonly right: number } {
	const offered = new Map([[right.join(' '), right]]);
	for (const each of wrong) if (offered.size < mostArrangements) offered.set(each.join(' '), each);
	const sorted = [...offered].sort(([one], [other]) => (one < other ? -1 : 1));
	return { offered: sorted.map(([, each]) => each), right: sorted.findIndex(([text]) => text === right.join(' ')) };
}

/** The list with the entries at two indexes exchanged. */
export function exchange(list: readonly number[], one: number, other: number): readonly number[] {
	return list.map((value, index) =>
		index === one ? (list[other] ?? value) : index === other ? (list[one] ?? value) : value,
	);
}
