import { ExpressionSyntaxError, parseMathematics } from '../../expression/parse.ts';
import type { ItemText } from '../../items/texts.ts';
import { parseRichText, RichTextError } from '../../markup/rich-text.ts';
import type { Problem } from '../../problem.ts';
import { isPlainNumber } from '../facts.ts';
import { commonPractice, type Rule } from '../rule.ts';

/** Unclosed backticks, and mathematics that cannot be read. */
export const readableMathematics: Rule = {
	severity: 'stop',
	guideline: commonPractice,
	find: ({ texts }) => texts.flatMap(checkReading),
};

function checkReading({ path, kind, text, seenBy }: ItemText): readonly Problem[] {
	// The key's own expressions are read, with the same codes, when the key is computed.
	if (kind === 'plain' || (kind === 'mathematics' && seenBy === 'staff')) return [];
	if (kind === 'rich' ? !text.includes('`') : isPlainNumber(text)) return [];
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
