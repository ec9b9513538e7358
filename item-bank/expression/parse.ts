import { invariant } from '../invariant.ts';
import { type Mark, scanToken, type Token } from './scan.ts';
import { ExpressionSyntaxError } from './syntax-error.ts';
import {
	absoluteNode,
	type Expression,
	groupNode,
	type MathematicsNode,
	numberNode,
	type Operator,
	operationNode,
	oppositeNode,
	type Relation,
} from './tree.ts';

export { ExpressionSyntaxError };

/** Signs and parentheses that were typed but leave no trace in the tree, counted. */
export interface DroppedMarks {
	/** Plus signs in front of a number or parenthesis, as in +7. */
	plusSigns: number;
	/** Minus signs in front of the numeral 0. */
	zeroSigns: number;
	/** Pairs of parentheses around a single number that carries no minus. */
	parentheses: number;
}

interface Cursor {
	readonly text: string;
	readonly isUnknownAllowed: boolean;
	readonly dropped: DroppedMarks;
	token: Token;
	depth: number;
	operands: number;
}

type Inside = 'nothing' | '(' | '[' | '|';

const LONGEST_TEXT = 200;
const DEEPEST_NESTING = 20;
const MOST_NUMBERS = 8;
const relations: ReadonlySet<Mark> = new Set<Mark>(['=', '<', '>', '≤', '≥']);
const sums: ReadonlyMap<Mark, Operator> = new Map<Mark, Operator>([
	['+', 'add'],
	['-', 'subtract'],
]);
const products: ReadonlyMap<Mark, Operator> = new Map<Mark, Operator>([
	['×', 'multiply'],
	['÷', 'divide'],
]);

/**
 * Reads an integer expression such as "3 - (-8)", "-3(5)" or "|2 - 9| × 4": 1 to 8 numbers of at most 6 digits, at
 * most 200 characters, parentheses and absolute value nested at most 20 deep.
 *
 * - A minus directly before a numeral belongs to the number, so -3 × 5 is (−3) × 5; before anything else it is an
 *   opposite that binds more tightly than ×. Before a numeral in parentheses it stays an opposite: -(5), -(-5).
 * - One sign may follow an operator directly: 3 - -8, 3 ++ 8. Two signs in a row anywhere else are refused.
 * - A plus sign in front of a number is dropped; -0 is 0, as zero has no sign.
 * - A parenthesis or an absolute value after an operand multiplies: 2(3 - 8), (-3)(5), 2|-4|. Directly after a
 *   division that is refused, because 12 ÷ 2(3) is read in two ways.
 * - Parentheses around one number are dropped; all others stay as groups.
 * - Leading zeros, decimals, digit separators, letters and the unknown are refused.
 * @throws {ExpressionSyntaxError} at the first place that does not fit.
 */
export function parseExpression(text: string): Expression {
	const { mathematics } = readMathematics(text, { isUnknownAllowed: false, isStatementAllowed: false });
	invariant(mathematics.kind !== 'statement', 'a statement was read where none is allowed');
	return mathematics;
}

/**
 * Reads an expression like {@link parseExpression}, or a statement: sides joined by = < > ≤ ≥ (also <= >=), each side
 * within the limits of an expression. The unknown ? may stand for a number.
 * @throws {ExpressionSyntaxError} at the first place that does not fit.
 */
export function parseMathematics(text: string): MathematicsNode {
	// Most options are plain numbers, which need no parser.
	if (/^(?:0|-?[1-9]\d{0,5})$/.test(text)) return numberNode(Number(text));
	return readMathematics(text, { isUnknownAllowed: true, isStatementAllowed: true }).mathematics;
}

/** Reads like {@link parseMathematics} or {@link parseExpression} and also counts what the tree does not keep. */
export function readMathematics(
	text: string,
	allowed: { readonly isUnknownAllowed: boolean; readonly isStatementAllowed: boolean },
): { readonly mathematics: MathematicsNode; readonly dropped: Readonly<DroppedMarks> } {
	if (text.length > LONGEST_TEXT) {
		const expected = `at most ${LONGEST_TEXT} characters`;
		throw new ExpressionSyntaxError({ text, position: LONGEST_TEXT, expected, found: `${text.length} characters` });
	}
	const dropped: DroppedMarks = { plusSigns: 0, zeroSigns: 0, parentheses: 0 };
	const { isUnknownAllowed } = allowed;
	const cursor: Cursor = { text, isUnknownAllowed, dropped, token: scanToken(text, 0), depth: 0, operands: 0 };
	const first = parseSum(cursor, 'nothing');
	const sides: Expression[] = [first];
	const joints: Relation[] = [];
	while (allowed.isStatementAllowed && isRelation(cursor.token)) {
		joints.push(cursor.token.mark);
		advance(cursor);
		cursor.operands = 0;
		sides.push(parseSum(cursor, 'nothing'));
	}
	if (cursor.token.kind !== 'end') refuse(cursor, 'an operator or the end');
	const mathematics: MathematicsNode = joints.length === 0 ? first : { kind: 'statement', sides, relations: joints };
	return { mathematics, dropped };
}

function parseSum(cursor: Cursor, inside: Inside): Expression {
	let left = parseProduct(cursor, inside);
	for (let operator = getMark(cursor, sums); operator; operator = getMark(cursor, sums)) {
		advance(cursor);
		left = operationNode(operator, left, parseProduct(cursor, inside));
	}
	return left;
}

function parseProduct(cursor: Cursor, inside: Inside): Expression {
	let left = parseSigned(cursor);
	let isAfterDivision = false;
	for (;;) {
		const operator = getMark(cursor, products);
		if (operator) advance(cursor);
		else if (!opensFactor(cursor.token, inside)) return left;
		else if (isAfterDivision)
			refuse(cursor, 'a times sign, because a parenthesis after a division is read in two ways');
		left = operationNode(operator ?? 'multiply', left, parseSigned(cursor));
		isAfterDivision = operator === 'divide';
	}
}

function parseSigned(cursor: Cursor): Expression {
	const sign = cursor.token.kind === 'mark' ? cursor.token.mark : undefined;
	if (sign !== '+' && sign !== '-') return parseOperand(cursor);
	advance(cursor);
	if (getMark(cursor, sums)) refuse(cursor, 'a number or an opening parenthesis after a sign');
	const isNumeral = cursor.token.kind === 'numeral';
	const operand = parseOperand(cursor);
	if (sign === '+') {
		cursor.dropped.plusSigns += 1;
		return operand;
	}
	if (!isNumeral || operand.kind !== 'number') return oppositeNode(operand);
	if (operand.value === 0) cursor.dropped.zeroSigns += 1;
	return numberNode(-operand.value);
}

function parseOperand(cursor: Cursor): Expression {
	const { token } = cursor;
	if (token.kind === 'numeral') {
		countOperand(cursor);
		advance(cursor);
		return numberNode(token.value);
	}
	if (token.kind === 'mark') {
		if (token.mark === '(') return parseFenced(cursor, '(', ')');
		if (token.mark === '[') return parseFenced(cursor, '[', ']');
		if (token.mark === '|') return parseFenced(cursor, '|', '|');
		if (token.mark === '?' && cursor.isUnknownAllowed) {
			countOperand(cursor);
			advance(cursor);
			return { kind: 'unknown' };
		}
	}
	return refuse(cursor, 'a number or an opening parenthesis');
}

function parseFenced(cursor: Cursor, opening: '(' | '[' | '|', closing: Mark): Expression {
	cursor.depth += 1;
	if (cursor.depth > DEEPEST_NESTING) refuse(cursor, `at most ${DEEPEST_NESTING} parentheses inside each other`);
	advance(cursor);
	const of = parseSum(cursor, opening);
	if (cursor.token.kind !== 'mark' || cursor.token.mark !== closing) refuse(cursor, `an operator or "${closing}"`);
	advance(cursor);
	cursor.depth -= 1;
	if (opening === '|') return absoluteNode(of);
	if (of.kind !== 'number' && of.kind !== 'unknown') return groupNode(of);
	if (of.kind === 'unknown' || of.value >= 0) cursor.dropped.parentheses += 1;
	return of;
}

function advance(cursor: Cursor): void {
	cursor.token = scanToken(cursor.text, cursor.token.position + cursor.token.text.length);
}

function countOperand(cursor: Cursor): void {
	cursor.operands += 1;
	if (cursor.operands > MOST_NUMBERS) refuse(cursor, `at most ${MOST_NUMBERS} numbers`);
}

function getMark(cursor: Cursor, operators: ReadonlyMap<Mark, Operator>): Operator | undefined {
	return cursor.token.kind === 'mark' ? operators.get(cursor.token.mark) : undefined;
}

function isRelation(token: Token): token is Token & { readonly mark: Relation } {
	return token.kind === 'mark' && relations.has(token.mark);
}

function opensFactor(token: Token, inside: Inside): boolean {
	if (token.kind !== 'mark') return false;
	return token.mark === '(' || token.mark === '[' || (token.mark === '|' && inside !== '|');
}

function refuse(cursor: Cursor, expected: string): never {
	const { text, token } = cursor;
	const end = text.trim() === '' ? 'nothing' : 'the end';
	const found = token.kind === 'end' ? end : `"${token.text}"`;
	throw new ExpressionSyntaxError({ text, position: token.position, expected, found });
}
