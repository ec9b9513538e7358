import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ExpressionSyntaxError, parseMathematics } from '../../../item-bank/expression/parse.ts';
import { parseRichText, printRichText, RichTextError, speakRichText } from '../../../item-bank/markup/rich-text.ts';

function catchRichText(text: string): RichTextError {
	try {
		parseRichText(text);
	} catch (error) {
		if (error instanceof RichTextError) return error;
		throw error;
	}
	throw new Error(`"${text}" was accepted`);
}

describe('parseRichText', () => {
	it('splits text from mathematics between backticks', () => {
		expect(parseRichText('What is `-3 + (-8)`?')).toStrictEqual([
			{ kind: 'text', text: 'What is ' },
			{ kind: 'mathematics', mathematics: parseMathematics('-3 + -8') },
			{ kind: 'text', text: '?' },
		]);
		expect(parseRichText('`?``3 = 3`').map(({ kind }) => kind)).toStrictEqual(['mathematics', 'mathematics']);
		expect(parseRichText('')).toStrictEqual([]);
	});

	it.each([
		['Is `3 + 4', 3, 'none'],
		['Is `3` or `4', 10, 'none'],
		['Is `3 + x`?', 8, '"x"'],
		['Is `3 + `?', 8, 'the end'],
		['Is ``?', 4, 'nothing'],
		['`3` and `4.5`', 10, '"4.5"'],
	])('refuses "%s" at position %i', (text, position, found) => {
		const error = catchRichText(text);
		expect([error.code, error.position, error.found]).toStrictEqual(['rich-text', position, found]);
		expect(error.cause instanceof ExpressionSyntaxError).toBe(found !== 'none');
	});

	it('keeps every text without backticks as it stands', () => {
		fc.assert(
			fc.property(fc.string({ unit: 'grapheme' }), (text) => {
				fc.pre(!text.includes('`'));
				expect(printRichText(text)).toBe(text);
				expect(speakRichText(text)).toBe(text);
			}),
		);
	});
});

describe('printRichText and speakRichText', () => {
	it('write the mathematics as print and speech do', () => {
		const text = 'The gauge fell from `3` to `3 + -8`. Is `3 + -8 < -4` true?';
		expect(printRichText(text)).toBe('The gauge fell from 3 to 3 + (−8). Is 3 + (−8) < −4 true?');
		expect(printRichText(text, 'shortened')).toBe('The gauge fell from 3 to 3 − 8. Is 3 − 8 < −4 true?');
		expect(speakRichText(text)).toBe(
			'The gauge fell from 3 to 3 plus negative 8. Is 3 plus negative 8 is less than negative 4 true?',
		);
	});
});
