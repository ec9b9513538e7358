import { expect, test } from 'vitest';
import { readCell } from '../../../server/results/cell-text.ts';

test.each([
	['-50', '-50'],
	[' -5\u00A0', '-5'],
	['\u200B7\uFEFF', '7'],
	["'-5", '-5'],
	['=-5', '-5'],
	['="-5"', '-5'],
	['="B"', 'B'],
	['−5', '−5'],
	['–5', '-5'],
	['－5', '-5'],
	['=', '='],
	['+5', '+5'],
	['well-known – or not', 'well-known – or not'],
])('%j is read as %j', (cell, text) => {
	expect(readCell(cell)).toEqual({ text });
});

test.each([
	['=SUM(A1:A3)', 'formula'],
	['=5-10', 'formula'],
	['=HYPERLINK("x")', 'formula'],
	['#NAME?', 'spreadsheet-error'],
	['#REF!', 'spreadsheet-error'],
	['####', 'spreadsheet-error'],
	['\uFFFD5', 'unreadable'],
])('%j has lost what was typed', (cell, fault) => {
	expect(readCell(cell)).toEqual({ fault });
});
