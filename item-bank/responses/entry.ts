import type { GridProfile } from '../types.ts';
import { columnCount, type Reading } from './grid.ts';

/**
 * Reads a number typed in a field under the rules of a grid profile: an optional sign (hyphen-minus, U+2212 or plus), then
 * digits. Zeros in front are read as the grid reads them. Blanks around the number are not part of it.
 */
export function readEntry(text: string, profile: GridProfile): Reading {
	if (text.trim() === '') return { kind: 'omitted' };
	const found = /^([-−+]?)([0-9]+)$/.exec(text.trim());
	if (!found) return { kind: 'invalid', reason: 'not-a-number' };
	const [, sign = '', digits = ''] = found;
	if (digits.length > longestEntry(profile)) return { kind: 'invalid', reason: 'too-long' };
	if (profile.zeros === 'strict' && digits.length > 1 && digits.startsWith('0')) {
		return { kind: 'invalid', reason: 'leading-zero' };
	}
	const size = Number(digits);
	return { kind: 'valid', value: sign !== '' && sign !== '+' && size !== 0 ? -size : size };
}

/** Every spelling without blanks that {@link readEntry} reads as the value, the plainest first. */
export function acceptedEntries(value: number, profile: GridProfile): readonly string[] {
	const bare = String(Math.abs(value));
	const longest = profile.zeros === 'lenient' ? longestEntry(profile) : bare.length;
	const signs = value < 0 ? ['-', '−'] : value > 0 ? ['', '+'] : ['', '-', '−', '+'];
	const spellings: string[] = [];
	for (let length = bare.length; length <= longest; length += 1) {
		for (const sign of signs) spellings.push(sign + bare.padStart(length, '0'));
	}
	return spellings;
}

/** The most digits a number can have on the profile's grid. */
function longestEntry(profile: GridProfile): number {
	return profile.signColumn === 'first' ? profile.digitColumns : columnCount(profile);
}
