import { expect, test } from 'vitest';
import { balanceOfRepresentation } from '../../../item-bank/forms/balance-of-representation.ts';

// Outside check: Webb's balance of representation, 1 − (Σ |1/O − I(k)/H|) / 2, formula from memory; cases worked by hand.
test('is 1 where every standard is hit equally often', () => {
	expect(balanceOfRepresentation([3, 3, 3])).toBe(1);
	expect(balanceOfRepresentation([7])).toBe(1);
});

test('falls with the share that stands in the wrong place', () => {
	// O = 2, H = 4: |1/2 − 3/4| + |1/2 − 1/4| = 1/2, halved 1/4.
	expect(balanceOfRepresentation([3, 1])).toBeCloseTo(0.75, 12);
	// O = 4, H = 10: |1/4 − 7/10| = 0.45, three times |1/4 − 1/10| = 0.15; sum 0.9, halved 0.45.
	expect(balanceOfRepresentation([7, 1, 1, 1])).toBeCloseTo(0.55, 12);
	// O = 3, H = 6: |1/3 − 1/2| + |1/3 − 1/3| + |1/3 − 1/6| = 1/3, halved 1/6.
	expect(balanceOfRepresentation([3, 2, 1])).toBeCloseTo(5 / 6, 12);
});

test('counts only standards that are hit, and is 0 without any', () => {
	expect(balanceOfRepresentation([2, 0, 2])).toBe(1);
	expect(balanceOfRepresentation([])).toBe(0);
});
