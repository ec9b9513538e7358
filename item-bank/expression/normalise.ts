import {
	absoluteNode,
	type Expression,
	groupNode,
	isSumOperator,
	type MathematicsNode,
	numberNode,
	type OperationNode,
	operationNode,
	oppositeNode,
} from './tree.ts';

/**
 * The tree as its printed text says it, so that parse(print(e)) equals normaliseExpression(e):
 * a group is put wherever print must write parentheses, groups around a single number or unknown go, −0 becomes 0.
 * Nothing else changes.
 */
export function normaliseExpression(expression: Expression): Expression {
	return normaliseAt(expression, true);
}

/** {@link normaliseExpression} on every side of a statement, or on an expression. */
export function normaliseMathematics(mathematics: MathematicsNode): MathematicsNode {
	if (mathematics.kind !== 'statement') return normaliseExpression(mathematics);
	return { ...mathematics, sides: mathematics.sides.map(normaliseExpression) };
}

/** Whether the expression is one sign or fence that needs no parentheses wherever it stands. */
function isClosed(expression: Expression): boolean {
	return expression.kind !== 'operation' && expression.kind !== 'opposite';
}

function normaliseAt(expression: Expression, isLeading: boolean): Expression {
	switch (expression.kind) {
		case 'number':
			return numberNode(expression.value);
		case 'unknown':
			return expression;
		case 'absolute':
			return absoluteNode(normaliseExpression(expression.of));
		case 'group': {
			const of = normaliseExpression(expression.of);
			return of.kind === 'number' || of.kind === 'unknown' ? of : groupNode(of);
		}
		case 'opposite': {
			const of = normaliseExpression(expression.of);
			return oppositeNode(isClosed(of) ? of : groupNode(of));
		}
		case 'operation':
			return operationNode(
				expression.operator,
				normaliseOperand(expression, 'left', isLeading),
				normaliseOperand(expression, 'right', false),
			);
		default:
			return expression satisfies never;
	}
}

function normaliseOperand(parent: OperationNode, side: 'left' | 'right', isLeading: boolean): Expression {
	const operand = parent[side];
	const isBare = operand.kind === 'operation' ? keepsItsPlace(parent, operand, side) : isClosed(operand) || isLeading;
	return isBare ? normaliseAt(operand, isLeading) : groupNode(normaliseExpression(operand));
}

function keepsItsPlace(parent: OperationNode, operand: OperationNode, side: 'left' | 'right'): boolean {
	const isParentSum = isSumOperator(parent.operator);
	const isOperandSum = isSumOperator(operand.operator);
	return side === 'left' ? isParentSum || !isOperandSum : isParentSum && !isOperandSum;
}
