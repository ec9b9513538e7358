import type { Rule } from '../rule.ts';

/** Characters outside the Char production of XML 1.0 (tab and line ends are allowed there, but have no place in an item's text). */
const illegal =
	/[\u0000-\u001F\u007F-\u009F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

/** Texts that no XML document can hold, and texts of blanks only. */
export const printableText: Rule = {
	severity: 'stop',
	guideline: { source: 'XML 1.0, production Char' },
	find: ({ texts }) =>
		texts.flatMap(({ path, text }) => {
			const found = illegal.exec(text);
			if (found) {
				const point = `U+${found[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
				const message = `expected printable text, found the character ${point} at position ${found.index}`;
				return [{ code: 'illegal-character', path, message }];
			}
			return text.trim() === '' ? [{ code: 'text-blank', path, message: 'expected words, found only blanks' }] : [];
		}),
};
