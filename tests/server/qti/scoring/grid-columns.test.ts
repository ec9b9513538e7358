import { expect, test } from 'vitest';
import { encodeGrid } from '../../../../item-bank/responses/grid.ts';
import { getGridProfile } from '../../../../item-bank/responses/grid-profiles.ts';
import { tryStates } from '../grid-states.ts';

// Every state of the grids with a column for the sign; of the other, which has 248,832, one in eleven. `npm run prove` tries all.
test.each([
	['plain-sign-first', -7, 'qti-3.0', 1],
	['left-sign-first', 12, 'qti-2.1', 1],
	['left-sign-first', -305, 'qti-2.2', 7],
	['plain-sign-first', 0, 'qti-2.2', 7],
	['floating-sign', -42, 'qti-3.0', 11],
	['floating-sign', 10_000, 'qti-2.1', 11],
] as const)(
	'on %s exactly the griddings that the bank reads as %i earn the score, as %s',
	(id, value, version, every) => {
		const profile = getGridProfile(id);
		const { differing, accepted, tried } = tryStates(value, profile, version, { every, hasFeedback: every > 1 });
		expect(differing).toEqual([]);
		if (every === 1) expect(accepted).toBe(encodeGrid(value, profile).length);
		expect(tried).toBeGreaterThan(4000);
	},
);
