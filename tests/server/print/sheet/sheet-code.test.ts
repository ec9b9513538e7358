import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	codeSize,
	drawSheetCode,
	readSheetCode,
	type SheetCode,
	writeSheetCode,
} from '../../../../server/print/sheet/sheet-code.ts';

const formId = fc.stringMatching(/^[a-z0-9][a-z0-9-]{2,62}$/);
const student = fc.stringMatching(/^[A-Z0-9][A-Z0-9-]{1,23}$/);
const sheetCodes: fc.Arbitrary<SheetCode> = fc.record({
	kind: fc.constantFrom('sheet', 'work', 'booklet'),
	form: formId,
	version: fc.integer({ min: 1, max: 99 }),
	layout: fc.oneof(fc.constant('-'), fc.stringMatching(/^[0-9a-f]{8}$/)),
	page: fc.integer({ min: 0, max: 99 }),
	student: fc.option(student, { nil: undefined }),
});

test('what is written as a code is read back', () => {
	fc.assert(
		fc.property(sheetCodes, (code) => {
			expect(readSheetCode(writeSheetCode(code))).toEqual(code);
		}),
	);
});

test.each([
	'',
	'ZP1S a 1 12345678 1',
	'ZP2S form-a 1 12345678 1 6A-01',
	'ZP1X form-a 1 12345678 1 -',
	'ZP1S form-a 1 12345678 1 6a',
	'https://example.org',
])('the text "%s" is no code of ours', (text) => expect(readSheetCode(text)).toBeUndefined());

test('a size chosen for the longest student code holds the code of any student up to that length', () => {
	fc.assert(
		fc.property(sheetCodes, (code) => {
			const size = codeSize(code.form, code.version, code.student?.length ?? 0);
			const mark = drawSheetCode(code, { x: 100, y: 20, ...size });
			expect(mark.kind).toBe('rects');
			expect(size.size).toBeLessThanOrEqual(22);
		}),
		{ numRuns: 60 },
	);
});
