/** The four operations as the tree names them. */
export type Operator = 'add' | 'subtract' | 'multiply' | 'divide';

/** An integer as written, sign included: -8 in "3 + (-8)" is one number. */
export interface NumberNode {
	readonly kind: 'number';
	readonly value: number;
}

/** The unknown number, written "?". It cannot be evaluated. */
export interface UnknownNode {
	readonly kind: 'unknown';
}

/** A minus in front of something other than a plain numeral, such as -(3 + 4) or -(-5). */
export interface OppositeNode {
	readonly kind: 'opposite';
	readonly of: Expression;
}

/** Absolute value, written |…|. */
export interface AbsoluteNode {
	readonly kind: 'absolute';
	readonly of: Expression;
}

/** Parentheses the author wrote around something that is not a single number, needed or not. */
export interface GroupNode {
	readonly kind: 'group';
	readonly of: Expression;
}

/** One operation on two expressions. */
export interface OperationNode {
	readonly kind: 'operation';
	readonly operator: Operator;
	readonly left: Expression;
	readonly right: Expression;
}

/** An integer expression. */
export type Expression = NumberNode | UnknownNode | OppositeNode | AbsoluteNode | GroupNode | OperationNode;

/** How two sides of a statement are compared. */
export type Relation = '=' | '<' | '>' | '≤' | '≥';

/** Two or more expressions joined by relations, such as -8 < -3 or -3 + ? = 5. There is one relation fewer than sides. */
export interface Statement {
	readonly kind: 'statement';
	readonly sides: readonly Expression[];
	readonly relations: readonly Relation[];
}

/** What stands between backticks or on a displayed line: an expression, or a statement about several. */
export type MathematicsNode = Expression | Statement;

/** Largest size of any number written or reached. */
export const LARGEST_NUMBER = 999_999;

/** A number node; negative zero becomes 0. */
export function numberNode(value: number): NumberNode {
	return { kind: 'number', value: value === 0 ? 0 : value };
}

/** The opposite of an expression, kept as such: oppositeNode(numberNode(5)) is −(5), not the number −5. */
export function oppositeNode(of: Expression): OppositeNode {
	return { kind: 'opposite', of };
}

/** The absolute value of an expression. */
export function absoluteNode(of: Expression): AbsoluteNode {
	return { kind: 'absolute', of };
}

/** Written parentheses around an expression. */
export function groupNode(of: Expression): GroupNode {
	return { kind: 'group', of };
}

/** One operation on two expressions. */
export function operationNode(operator: Operator, left: Expression, right: Expression): OperationNode {
	return { kind: 'operation', operator, left, right };
}

/** Whether an operator is + or −, which bind less tightly than × and ÷. */
export function isSumOperator(operator: Operator): operator is 'add' | 'subtract' {
	return operator === 'add' || operator === 'subtract';
}
