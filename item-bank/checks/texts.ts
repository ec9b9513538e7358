import { ExpressionSyntaxError, parseMathematics } from '../expression/parse.ts';
import { type ItemText, textsOf } from '../items/texts.ts';
import { parseRichText, RichTextError } from '../markup/rich-text.ts';
import type { Problem } from '../problem.ts';
import type { Item } from '../types.ts';

/** Texts that no XML document can hold, unclosed backticks, and mathematics that cannot be read. */
export function checkTexts(item: Item): readonly Problem[] {
	return textsOf(item).flatMap((text) => checkCharacters(text) ?? checkReading(text));
}

/** Characters outside the Char production of XML 1.0 (tab and line ends are allowed there, but have no place in an item's text). */
const illegal =
	/[\u0000-\u001F\u007F-\u009F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

function checkCharacters({ path, text }: ItemText): readonly Problem[] | undefined {
	const found = illegal.exec(text);
	if (found) {
		const point = `U+${(found[0].charCodeAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
		const message = `expected printable text, found the character ${point} at position ${found.index}`;
		return [{ code: 'illegal-character', path, message }];
	}
	if (text.trim() === '') return [{ code: 'text-blank', path, message: 'expected words, found only blanks' }];
	return undefined;
}

function checkReading({ path, kind, text, seenBy }: ItemText): readonly Problem[] {
	// The key's own expressions and the option's mathematics are read, with the same codes, when the key is computed.
	if (kind === 'plain' || (kind === 'mathematics' && seenBy === 'staff')) return [];
	try {
		if (kind === 'rich') parseRichText(text);
		else parseMathematics(text);
		return [];
	} catch (error) {
		if (error instanceof RichTextError || error instanceof ExpressionSyntaxError) {
			return [{ code: error.code, path, message: error.message }];
		}
		throw error;
	}
}
