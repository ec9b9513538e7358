import type { ErrorPattern } from './pattern.ts';

/** A move across zero ends one tick too far: −3 + 5 as 3. */
export const zeroSkipped: ErrorPattern = {
	id: 'zero-skipped',
	name: 'zero is skipped on the way across',
	sentence: 'Consistent with counting past zero without counting zero itself, which ends one tick too far.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		twoNumbers: ({ operator, left, right }) => {
			if (operator !== 'add' && operator !== 'subtract') return undefined;
			return crossZero(left, operator === 'add' ? right : -right, 1);
		},
		walk: ({ start, moves, tickEvery }) =>
			moves.reduce((at, move) => crossZero(at, move, tickEvery) ?? at + move, start),
	},
};

/** Where a move from one side of zero to the other ends; undefined when it stays on one side, starts or ends at zero. */
function crossZero(start: number, move: number, tick: number): number | undefined {
	const end = start + move;
	return start * end < 0 ? end + Math.sign(move) * tick : undefined;
}
