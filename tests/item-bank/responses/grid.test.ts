import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	columnCount,
	columnSymbols,
	decodeGrid,
	encodeGrid,
	fitsGrid,
	type GridColumns,
} from '../../../item-bank/responses/grid.ts';
import { getGridProfile, gridProfiles } from '../../../item-bank/responses/grid-profiles.ts';
import type { GridProfile } from '../../../item-bank/types.ts';

/** Columns from text: a space is an empty column. */
const columns = (text: string): GridColumns =>
	[...text].map((mark) => (mark === ' ' ? [] : [mark])) as unknown as GridColumns;

const plain = getGridProfile('plain-sign-first');
const left = getGridProfile('left-sign-first');
const floating = getGridProfile('floating-sign');
const profileOf = fc.constantFrom(...gridProfiles, {
	...plain,
	id: 'unsigned',
	signColumn: 'none',
	symbols: [],
} as GridProfile);

describe('reading a grid by the published rules (statements listed in trade reference section 3)', () => {
	test('no sign marked means positive (Texas Algebra I)', () => {
		expect(decodeGrid(columns('   50'), plain)).toEqual({ kind: 'valid', value: 50 });
	});
	test('minus in the first column, digits directly after (consortium grid)', () => {
		expect(decodeGrid(columns('-50  '), left)).toEqual({ kind: 'valid', value: -50 });
	});
	test('negatives must be left-justified (consortium grid)', () => {
		expect(decodeGrid(columns('-  50'), left)).toEqual({ kind: 'invalid', reason: 'not-at-left' });
	});
	test('positives stand left, right or in the middle (consortium grid)', () => {
		for (const text of [' 50  ', '  50 ', '   50']) {
			expect(decodeGrid(columns(text), left)).toEqual({ kind: 'valid', value: 50 });
		}
	});
	test('no blank between digits (consortium grid, Florida, North Carolina)', () => {
		for (const profile of gridProfiles) {
			expect(decodeGrid(columns(' 5 0 '), profile)).toEqual({ kind: 'invalid', reason: 'interior-blank' });
		}
	});
	test('first digit left or last digit right (Florida)', () => {
		expect(decodeGrid(columns('-12  '), floating)).toEqual({ kind: 'valid', value: -12 });
		expect(decodeGrid(columns('  -12'), floating)).toEqual({ kind: 'valid', value: -12 });
	});
	test('extra zeros are fine when the value is unchanged (Texas), or refused (consortium grid)', () => {
		expect(decodeGrid(columns('-0012'), plain)).toEqual({ kind: 'valid', value: -12 });
		expect(decodeGrid(columns('-0012'), left)).toEqual({ kind: 'invalid', reason: 'leading-zero' });
	});
	test('an empty grid is an omission, not a wrong answer (Texas)', () => {
		expect(decodeGrid(columns('     '), plain)).toEqual({ kind: 'omitted' });
	});
	test('two marks in a column are kept apart from wrong answers (common practice, no source)', () => {
		const doubled = [[], ['3', '8'], [], [], []] as unknown as GridColumns;
		expect(decodeGrid(doubled, plain)).toEqual({ kind: 'invalid', reason: 'double-mark' });
	});
	test('a sign without digits, outside its column, or not offered is invalid', () => {
		expect(decodeGrid(columns('-    '), plain)).toEqual({ kind: 'invalid', reason: 'sign-without-digits' });
		expect(decodeGrid(columns(' -50 '), plain)).toEqual({ kind: 'invalid', reason: 'sign-out-of-place' });
		expect(decodeGrid(columns('- 50 '), floating)).toEqual({ kind: 'invalid', reason: 'sign-out-of-place' });
		expect(decodeGrid(columns('+50  '), plain)).toEqual({ kind: 'invalid', reason: 'symbol-not-offered' });
		expect(decodeGrid(columns('5    '), plain)).toEqual({ kind: 'invalid', reason: 'digit-in-sign-column' });
		expect(decodeGrid(columns('50'), plain)).toEqual({ kind: 'invalid', reason: 'wrong-column-count' });
	});
	test('minus zero is zero', () => {
		const read = decodeGrid(columns('-0   '), plain);
		expect(read).toEqual({ kind: 'valid', value: 0 });
		expect(read.kind === 'valid' && Object.is(read.value, 0)).toBe(true);
	});
});

describe('writing a value into a grid', () => {
	test('every gridding of every value that fits reads back as the value', () => {
		fc.assert(
			fc.property(profileOf, fc.integer({ min: -99_999, max: 99_999 }), (profile, value) => {
				const griddings = encodeGrid(value, profile);
				expect(griddings.length > 0).toBe(fitsGrid(value, profile));
				for (const gridding of griddings) expect(decodeGrid(gridding, profile)).toEqual({ kind: 'valid', value });
				expect(new Set(griddings.map((gridding) => JSON.stringify(gridding))).size).toBe(griddings.length);
			}),
			{ numRuns: 2000 },
		);
	});

	test('every state of a grid is valid, omitted or invalid, and each valid one is among the griddings of its value', () => {
		fc.assert(
			fc.property(
				profileOf.chain((profile) => {
					const column = fc.oneof(
						{
							weight: 4,
							arbitrary: fc.constantFrom(' ', '0', '1', '5', '9', '-', '+').map((mark) => (mark === ' ' ? [] : [mark])),
						},
						{ weight: 1, arbitrary: fc.subarray(['-', '+', '0', '7']) },
					);
					const count = columnCount(profile);
					return fc.tuple(fc.constant(profile), fc.array(column, { minLength: count, maxLength: count }));
				}),
				([profile, state]) => {
					const read = decodeGrid(state as unknown as GridColumns, profile);
					if (read.kind === 'omitted') expect(state.flat()).toEqual([]);
					if (read.kind === 'invalid') expect(state.flat()).not.toEqual([]);
					if (read.kind === 'valid') expect(encodeGrid(read.value, profile)).toContainEqual(state);
				},
			),
			{ numRuns: 5000 },
		);
	});

	test('exhaustively, a grid of one digit column has exactly the griddings its rules name', () => {
		const profile: GridProfile = { ...plain, digitColumns: 1 };
		const marks = [[], ['-'], ['0'], ['1'], ['9']];
		const valid = marks.flatMap((first) =>
			marks
				.map((second) => decodeGrid([first, second] as unknown as GridColumns, profile))
				.filter(({ kind }) => kind === 'valid'),
		);
		// sign column blank or minus, times digits 0, 1, 9
		expect(valid).toHaveLength(6);
	});

	test('a column offers its sign, its digits or both', () => {
		expect(columnSymbols(plain, 0)).toEqual(['-']);
		expect(columnSymbols(plain, 1)).toHaveLength(10);
		expect(columnSymbols(floating, 1)).toHaveLength(11);
	});
});
