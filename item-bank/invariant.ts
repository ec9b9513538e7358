/** Thrown when the bank itself is wrong, never for bad input. */
export class InvariantError extends Error {
	readonly code = 'invariant';
}

/** Throws {@link InvariantError} with the message unless the condition holds. */
export function invariant(condition: unknown, message: string): asserts condition {
	if (!condition) throw new InvariantError(message);
}
