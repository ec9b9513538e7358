import { ExpressionSyntaxError } from './syntax-error.ts';
import { LARGEST_NUMBER, type Relation } from './tree.ts';

/** One sign of an expression, whatever way it was typed. */
export type Mark = '+' | '-' | '×' | '÷' | '(' | ')' | '[' | ']' | '|' | '?' | Relation;

/** A numeral, a mark or the end of the text, with the index where it starts and the text it covers. */
export type Token =
	| { readonly kind: 'numeral'; readonly value: number; readonly position: number; readonly text: string }
	| { readonly kind: 'mark'; readonly mark: Mark; readonly position: number; readonly text: string }
	| { readonly kind: 'end'; readonly position: number; readonly text: '' };

const marks: ReadonlyMap<string, Mark> = new Map<string, Mark>([
	...[...'()[]|?=<>≤≥+×÷'].map((mark): [string, Mark] => [mark, mark as Mark]),
	...[...'-\u2212\u2013\u2010\u2011'].map((minus): [string, Mark] => [minus, '-']),
	...[...'*\u00b7\u22c5'].map((times): [string, Mark] => [times, '×']),
	...[...'/\u2215'].map((by): [string, Mark] => [by, '÷']),
]);

/**
 * Reads the token that starts at or after an index, past white space. Minus may be typed as hyphen-minus, U+2212,
 * an en dash or a hyphen; times as × * · ⋅; divided by as ÷ / ∕; at most and at least as ≤ ≥ <= >=.
 * @throws {ExpressionSyntaxError} at the first character that belongs to no expression.
 */
export function scanToken(text: string, from: number): Token {
	let position = from;
	while (position < text.length && isSpace(text, position)) position += 1;
	if (position >= text.length) return { kind: 'end', position, text: '' };
	let end = position;
	while (isDigit(text, end)) end += 1;
	if (end > position) return scanNumeral(text, position, text.slice(position, end));
	const typed = text.charAt(position);
	if (text.charAt(position + 1) === '=') {
		if (typed === '<') return { kind: 'mark', mark: '≤', position, text: '<=' };
		if (typed === '>') return { kind: 'mark', mark: '≥', position, text: '>=' };
	}
	const mark = marks.get(typed);
	if (mark) return { kind: 'mark', mark, position, text: typed };
	const found = `"${String.fromCodePoint(text.codePointAt(position) ?? 0)}"`;
	throw new ExpressionSyntaxError({ text, position, expected: 'a whole number, an operator or a parenthesis', found });
}

function scanNumeral(text: string, position: number, digits: string): Token {
	const refuse = (at: number, expected: string, found: string) => {
		throw new ExpressionSyntaxError({ text, position: at, expected, found: `"${found}"` });
	};
	const after = position + digits.length;
	const next = text.charAt(after);
	if (next === '.' || next === ',') {
		let end = after + 1;
		while (isDigit(text, end)) end += 1;
		refuse(after, 'a whole number without decimal point or comma', digits + text.slice(after, end));
	}
	if (digits.length > String(LARGEST_NUMBER).length) refuse(position, 'a number of at most 6 digits', digits);
	if (digits.length > 1 && digits.startsWith('0')) refuse(position, 'a number without leading zeros', digits);
	return { kind: 'numeral', value: Number(digits), position, text: digits };
}

/** Whether an ASCII digit stands at an index; the codes are compared because expressions are read by the million. */
function isDigit(text: string, at: number): boolean {
	const code = text.charCodeAt(at);
	return code >= 48 && code <= 57;
}

function isSpace(text: string, at: number): boolean {
	const code = text.charCodeAt(at);
	return code === 32 || ((code < 33 || code > 126) && /\s/.test(text.charAt(at)));
}
