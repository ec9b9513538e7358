import type { GridProfile, GridResponse } from '../types.ts';

/** Symbols marked in each column, left to right: what a sheet holds. */
export type GridColumns = GridResponse['columns'];
type Mark = GridColumns[number][number];

/** Why a grid cannot be read as a number. */
export type GridFault =
	| 'wrong-column-count'
	| 'double-mark'
	| 'symbol-not-offered'
	| 'digit-in-sign-column'
	| 'sign-out-of-place'
	| 'sign-without-digits'
	| 'interior-blank'
	| 'not-at-left'
	| 'leading-zero';

/** What a grid or an entry says: a number, nothing, or something that is no number by the rules. */
export type Reading =
	| { readonly kind: 'valid'; readonly value: number }
	| { readonly kind: 'omitted' }
	| { readonly kind: 'invalid'; readonly reason: GridFault | 'not-a-number' | 'too-long' };

/** How many columns the profile has, the sign's included. */
export function columnCount(profile: GridProfile): number {
	return profile.digitColumns + (profile.signColumn === 'none' ? 0 : 1);
}

/** Symbols that a column of the profile offers, column 0 leftmost. */
export function columnSymbols(profile: GridProfile, column: number): readonly Mark[] {
	const digits = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;
	if (profile.signColumn === 'first') return column === 0 ? profile.symbols : digits;
	return profile.signColumn === 'floating' ? [...profile.symbols, ...digits] : digits;
}

/** Whether the value can be gridded at all. */
export function fitsGrid(value: number, profile: GridProfile): boolean {
	const digits = String(Math.abs(value)).length;
	if (value < 0 && !(profile.signColumn !== 'none' && profile.symbols.includes('-'))) return false;
	return digits + (profile.signColumn === 'floating' && value < 0 ? 1 : 0) <= digitRoom(profile);
}

/** Columns that can hold digits of one number. */
function digitRoom(profile: GridProfile): number {
	return profile.signColumn === 'first' ? profile.digitColumns : columnCount(profile);
}

/** Every gridding of the value that {@link decodeGrid} reads as that value; empty when it does not fit. Zero may carry a sign. */
export function encodeGrid(value: number, profile: GridProfile): readonly GridColumns[] {
	if (!fitsGrid(value, profile)) return [];
	const bare = String(Math.abs(value));
	const longest = profile.zeros === 'lenient' ? digitRoom(profile) : bare.length;
	const found: GridColumns[] = [];
	for (const sign of acceptedSigns(value, profile)) {
		for (let length = bare.length; length <= longest; length += 1) {
			found.push(...placeDigits(sign, bare.padStart(length, '0'), profile));
		}
	}
	return found;
}

function acceptedSigns(value: number, profile: GridProfile): readonly ('' | '-' | '+')[] {
	const offered = profile.signColumn === 'none' ? [] : profile.symbols;
	const signs: ('' | '-' | '+')[] = value < 0 ? [] : [''];
	if (value <= 0 && offered.includes('-')) signs.push('-');
	if (value >= 0 && offered.includes('+')) signs.push('+');
	return signs;
}

function placeDigits(sign: '' | '-' | '+', digits: string, profile: GridProfile): readonly GridColumns[] {
	const count = columnCount(profile);
	const hasOwnColumn = profile.signColumn === 'first';
	const run = hasOwnColumn ? digits : sign + digits;
	const first = hasOwnColumn ? 1 : 0;
	const last = sign === '-' && profile.placement === 'left-when-negative' ? first : count - run.length;
	const found: GridColumns[] = [];
	for (let start = first; start <= last; start += 1) {
		const columns: Mark[][] = Array.from({ length: count }, () => []);
		if (hasOwnColumn && sign !== '') columns[0] = [sign];
		for (const [offset, mark] of [...run].entries()) columns[start + offset] = [mark as Mark];
		found.push(columns);
	}
	return found;
}

/**
 * Reads a grid by the rules of its profile. Every state is exactly one of valid, omitted or invalid; where several rules
 * are broken the first of {@link GridFault} in reading order is named. Written boxes never count; −0 is 0.
 */
export function decodeGrid(columns: GridColumns, profile: GridProfile): Reading {
	const invalid = (reason: GridFault): Reading => ({ kind: 'invalid', reason });
	if (columns.length !== columnCount(profile)) return invalid('wrong-column-count');
	if (columns.every((marks) => marks.length === 0)) return { kind: 'omitted' };
	if (columns.some((marks) => marks.length > 1)) return invalid('double-mark');
	const marks = columns.map((column) => column[0] ?? '');
	const misplaced = findMisplacedMark(marks, profile);
	if (misplaced) return invalid(misplaced);

	const signAt = marks.findIndex((mark) => mark === '-' || mark === '+');
	const digitAt = marks.findIndex((mark) => /^\d$/.test(mark));
	if (digitAt < 0) return invalid('sign-without-digits');
	const lastAt = marks.findLastIndex((mark) => /^\d$/.test(mark));
	const digits = marks.slice(digitAt, lastAt + 1);
	if (profile.signColumn === 'floating' && signAt >= 0 && signAt !== digitAt - 1) return invalid('sign-out-of-place');
	if (digits.includes('')) return invalid('interior-blank');
	const isNegative = marks[signAt] === '-';
	const leftmost = profile.signColumn === 'first' || signAt >= 0 ? 1 : 0;
	if (isNegative && profile.placement === 'left-when-negative' && digitAt !== leftmost) return invalid('not-at-left');
	if (profile.zeros === 'strict' && digits.length > 1 && digits[0] === '0') return invalid('leading-zero');
	const size = Number(digits.join(''));
	return { kind: 'valid', value: isNegative && size !== 0 ? -size : size };
}

function findMisplacedMark(marks: readonly string[], profile: GridProfile): GridFault | undefined {
	for (const [column, mark] of marks.entries()) {
		if (mark === '' || columnSymbols(profile, column).includes(mark as Mark)) continue;
		if (/^\d$/.test(mark)) return 'digit-in-sign-column';
		const isOffered = profile.signColumn !== 'none' && profile.symbols.includes(mark as '-' | '+');
		return isOffered ? 'sign-out-of-place' : 'symbol-not-offered';
	}
	const signs = marks.filter((mark) => mark === '-' || mark === '+');
	return signs.length > 1 ? 'sign-out-of-place' : undefined;
}
