import fc from 'fast-check';
import { expect, test } from 'vitest';
import { acceptedEntries, readEntry } from '../../../item-bank/responses/entry.ts';
import { getGridProfile, gridProfiles } from '../../../item-bank/responses/grid-profiles.ts';

const plain = getGridProfile('plain-sign-first');

test('a typed number may carry a hyphen, a true minus or a plus', () => {
	for (const [text, value] of [
		['-8', -8],
		['−8', -8],
		['+8', 8],
		['8', 8],
		[' 8 ', 8],
		['008', 8],
		['-0', 0],
	] as const) {
		expect(readEntry(text, plain)).toEqual({ kind: 'valid', value });
	}
});

test('what is no integer is invalid, and nothing typed is an omission', () => {
	for (const text of ['3-5', '--8', '8.0', '1e2', '٣', '- 8', 'eight', '1,000']) {
		expect(readEntry(text, plain)).toEqual({ kind: 'invalid', reason: 'not-a-number' });
	}
	expect(readEntry('123456', plain)).toEqual({ kind: 'invalid', reason: 'too-long' });
	expect(readEntry('08', getGridProfile('left-sign-first'))).toEqual({ kind: 'invalid', reason: 'leading-zero' });
	expect(readEntry('  ', plain)).toEqual({ kind: 'omitted' });
});

test('the accepted entries are exactly the unpadded texts that read as the value', () => {
	const sign = fc.constantFrom('', '-', '−', '+', '--', '−-');
	const entry = fc
		.tuple(sign, fc.constantFrom('', '0', '00', '000'), fc.integer({ min: 0, max: 99_999 }))
		.map(([a, b, c]) => `${a}${b}${c}`);
	fc.assert(
		fc.property(
			fc.constantFrom(...gridProfiles),
			entry,
			fc.integer({ min: -200, max: 200 }),
			(profile, text, other) => {
				const read = readEntry(text, profile);
				if (read.kind === 'valid') expect(acceptedEntries(read.value, profile)).toContain(text);
				for (const spelling of acceptedEntries(other, profile))
					expect(readEntry(spelling, profile)).toEqual({ kind: 'valid', value: other });
			},
		),
		{ numRuns: 2000 },
	);
});
