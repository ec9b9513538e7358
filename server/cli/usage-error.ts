/** The command line was not understood; nothing was done. */
export class UsageError extends Error {
	readonly code = 'usage';

	constructor(message: string) {
		super(message);
		this.name = 'UsageError';
	}
}

/** The name among those known that is spelled most like the one typed, if any is near. */
export function findNearest(typed: string, known: readonly string[]): string | undefined {
	const [best] = known
		.map((name) => ({ name, distance: name.startsWith(typed) ? 0 : countEdits(typed, name) }))
		.filter(({ name, distance }) => distance <= Math.max(1, Math.floor(name.length / 3)))
		.sort((a, b) => a.distance - b.distance);
	return best?.name;
}

/** Levenshtein distance. */
function countEdits(a: string, b: string): number {
	let row = Array.from({ length: b.length + 1 }, (_unused, index) => index);
	for (const [index, letter] of [...a].entries()) {
		const next = [index + 1];
		for (const [column, other] of [...b].entries()) {
			const swap = (row[column] ?? 0) + (letter === other ? 0 : 1);
			next.push(Math.min(swap, (row[column + 1] ?? 0) + 1, (next[column] ?? 0) + 1));
		}
		row = next;
	}
	return row[b.length] ?? 0;
}
