import type { ErrorPattern } from './pattern.ts';

/** Each move ends one tick short: −3 + 5 as 1. */
export const startTickCounted: ErrorPattern = {
	id: 'start-tick-counted',
	name: 'the tick at the start is counted',
	sentence: 'Consistent with counting the tick at the start as the first step, which ends one tick short.',
	source: 'common practice, no source',
	evidence: 'practice',
	slips: {
		twoNumbers: ({ operator, left, right }) => {
			if (operator !== 'add' && operator !== 'subtract') return undefined;
			const move = operator === 'add' ? right : -right;
			return left + move - Math.sign(move);
		},
		walk: ({ start, moves, tickEvery }) => moves.reduce((at, move) => at + move - Math.sign(move) * tickEvery, start),
	},
};
