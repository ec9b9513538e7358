import { describe, expect, test } from 'vitest';
import { decodeGrid } from '../../../item-bank/responses/grid.ts';
import { getGridProfile, gridProfiles } from '../../../item-bank/responses/grid-profiles.ts';
import { exampleValues, gridRules, plainGridding } from '../../../server/print/grid-rules.ts';

describe.each(gridProfiles)('profile $id', (profile) => {
	test('has a worked example with a negative, gridded as its rules read it', () => {
		const values = exampleValues(profile);
		expect(values.some((value) => value < 0)).toBe(true);
		for (const value of values)
			expect(decodeGrid(plainGridding(value, profile) ?? [], profile)).toEqual({ kind: 'valid', value });
	});
});

test('rules say where the sign goes, which is where each profile takes it', () => {
	expect(gridRules(getGridProfile('plain-sign-first'))[1]).toBe(
		'For a negative number put the minus sign in the first box. The digits may stand in any boxes after it.',
	);
	expect(gridRules(getGridProfile('left-sign-first'))[1]).toBe(
		'For a negative number put the minus sign in the first box. Start a negative number in the box right after the sign. A plus sign may be left out.',
	);
	expect(gridRules(getGridProfile('floating-sign'))[1]).toBe(
		'For a negative number put the minus sign in the box right before the first digit.',
	);
});

test('zeros in front are forbidden only where the profile refuses them', () => {
	expect(gridRules(getGridProfile('left-sign-first'))).toContain('Do not write zeros in front of the number.');
	expect(gridRules(getGridProfile('plain-sign-first')).join(' ')).not.toContain('Do not write zeros');
});
