import { countOperations, countUnknowns, listNodes } from '../expression/count.ts';
import type { Expression, MathematicsNode } from '../expression/tree.ts';
import { withoutGroups } from '../figures/terms.ts';
import type { Item, ItemShape } from '../types.ts';
import { allAsked, stemMathematics, tryEvaluate } from './asked.ts';

/** The calculation an item asks for; "order" for comparisons, "other" where words alone or several things decide. */
export function shapeOf(item: Item): ItemShape {
	const shapes = new Set(allAsked(item).map(mathematicsShape));
	const [shape = 'other'] = shapes;
	return shapes.size === 1 ? shape : 'other';
}

function mathematicsShape(asked: MathematicsNode): ItemShape {
	if (asked.kind !== 'statement') return expressionShape(asked);
	if (asked.relations.some((relation) => relation !== '=')) return 'order';
	const [harder] = [...asked.sides].sort((a, b) => countOperations(b) - countOperations(a));
	return harder && countUnknowns(asked) === 0 ? expressionShape(harder) : 'other';
}

/** Whether working an expression left to right passes from one side of zero to the other. */
export function crossesZero(mathematics: MathematicsNode): boolean {
	const expressions = mathematics.kind === 'statement' ? mathematics.sides : [mathematics];
	return expressions.some((expression) => listNodes(expression).some(isCrossing));
}

/** Whether something negative is subtracted. */
export function subtractsNegative(mathematics: MathematicsNode): boolean {
	return listNodes(mathematics).some(
		(node) => node.kind === 'operation' && node.operator === 'subtract' && (tryEvaluate(node.right) ?? 0) < 0,
	);
}

/** Whether the stem asks for a number in an equation by a ?. */
export function hasUnknown(item: Item): boolean {
	return stemMathematics(item).some((mathematics) => countUnknowns(mathematics) > 0);
}

function isCrossing(node: Expression): boolean {
	if (node.kind !== 'operation' || node.operator === 'multiply' || node.operator === 'divide') return false;
	const [start, end] = [tryEvaluate(node.left), tryEvaluate(node)];
	return start !== undefined && end !== undefined && start * end < 0;
}

function expressionShape(expression: Expression): ItemShape {
	const plain = withoutGroups(expression);
	if (countOperations(plain) > 1 && plain.kind !== 'absolute') return 'several-steps';
	if (plain.kind === 'absolute' || plain.kind === 'opposite') return 'size-or-opposite';
	if (plain.kind !== 'operation') return 'other';
	const left = tryEvaluate(plain.left);
	const right = tryEvaluate(plain.right);
	if (left === undefined || right === undefined) return 'other';
	switch (plain.operator) {
		case 'add':
			return left < 0 && right < 0 ? 'sum-of-negatives' : left < 0 || right < 0 ? 'sum-unlike-signs' : 'no-negative';
		case 'subtract':
			if (right < 0) return 'minus-negative';
			return left < 0 ? 'negative-minus-positive' : left < right ? 'positive-minus-greater' : 'no-negative';
		case 'multiply':
			return left < 0 && right < 0
				? 'product-of-negatives'
				: left < 0 || right < 0
					? 'product-unlike-signs'
					: 'no-negative';
		case 'divide':
			return left < 0 && right < 0
				? 'quotient-of-negatives'
				: left < 0 || right < 0
					? 'quotient-unlike-signs'
					: 'no-negative';
		default:
			return plain.operator satisfies never;
	}
}
